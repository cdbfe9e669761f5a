namespace Scrapwright.Planning.Calendar;

/// <summary>
/// What a whole pass of evenings is after: which tasks are urgent, and what a minute of their work is worth. The ranges are our own choice, by measurement.
/// </summary>
/// <param name="Steps">How many steps each delivery stays behind the one before it; zero takes all through the shop together.</param>
/// <param name="Dates">From 0, steps alone decide what is urgent, to 1, dates alone.</param>
/// <param name="WorthOfDate">How much more a minute of the most urgent work by date is worth.</param>
/// <param name="WorthOfRest">How much more a minute is worth that a long rest follows.</param>
/// <param name="Chance">How much chance moves tasks up and down, in parts of all.</param>
internal sealed record EveningAim(double Steps, double Dates, double WorthOfDate, double WorthOfRest, double Chance)
{
    private const double MostSteps = 15;
    private const double MostWorthOfDate = 20;

    /// <summary>Any.</summary>
    internal static EveningAim Draw(Random random) => new(
        random.Next(3) == 0 ? 0 : MostSteps * Square(random.NextDouble()),
        random.Next(3) == 0 ? 0 : random.NextDouble(),
        random.Next(3) == 0 ? 0 : MostWorthOfDate * Square(random.NextDouble()),
        random.NextDouble(),
        random.NextDouble());

    /// <summary>One that is near.</summary>
    internal EveningAim Near(Random random) => new(
        Changed(random, Steps, 1, MostSteps),
        Changed(random, Dates, 0.2, 1),
        Changed(random, WorthOfDate, 3, MostWorthOfDate),
        Changed(random, WorthOfRest, 0.2, 1),
        Changed(random, Chance, 0.2, 1));

    private static double Square(double value) => value * value;

    /// <summary>Every second time another value, mostly within some distance.</summary>
    private static double Changed(Random random, double value, double distance, double most) =>
        random.Next(2) == 0 ? value : Math.Clamp(value + ((random.NextDouble() + random.NextDouble() + random.NextDouble() - 1.5) * 2 * distance), 0, most);
}
