namespace Scrapwright.Planning.Calendar;

/// <summary>
/// How one evening is filled: what each thing costs when the next task is chosen, in parts of the cost of going from the most to the least urgent. Drawn by chance, evening by evening; the ranges are our own choice, by measurement.
/// </summary>
/// <param name="Urgency">How much the rank of a task counts.</param>
/// <param name="SetUp">For every new setting.</param>
/// <param name="ShareOfSetUp">For a new setting that takes long beside the work that is ready for it.</param>
/// <param name="Closing">For work that could also be done when other hours are over; below zero it is done first.</param>
/// <param name="WaitMinutes">So much later than the first possible one a task may begin. [min]</param>
internal sealed record EveningRule(double Urgency, double SetUp, double ShareOfSetUp, double Closing, int WaitMinutes)
{
    /// <summary>Any.</summary>
    internal static EveningRule Draw(Random random) =>
        new(random.NextDouble() * 2, random.NextDouble() * 0.5, random.NextDouble() * 3, (random.NextDouble() * 2) - 0.5, random.Next(20));
}
