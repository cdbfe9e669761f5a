namespace Scrapwright.Planning.Calendar;

/// <summary>
/// What a whole pass of evenings is after: which tasks are urgent, and what a minute of their work is worth. The ranges are our own choice, by measurement.
/// </summary>
/// <param name="Steps">How many steps each delivery stays behind the one before it; zero takes all through the shop together.</param>
/// <param name="Dates">From 0, steps alone decide what is urgent, to 1, dates alone.</param>
/// <param name="WorthOfDate">How much more a minute of the most urgent work by date is worth.</param>
/// <param name="WorthOfRest">How much more a minute is worth that a long rest follows.</param>
/// <param name="Chance">How much chance moves tasks up and down, in parts of all.</param>
/// <param name="Later">By delivery: its date is taken to be so much later, or earlier when below zero. [min]</param>
internal sealed record EveningAim(double Steps, double Dates, double WorthOfDate, double WorthOfRest, double Chance, long[] Later)
{
    private const double MostSteps = 15;
    private const double MostWorthOfDate = 20;

    // For every priority number a date may be taken to be later by up to ten days, and is moved by some days at a time. [min]
    private const double MostByPriority = 10 * 1440;
    private const double Moved = 3 * 1440;

    /// <summary>Any.</summary>
    /// <param name="random">Draws.</param>
    /// <param name="priorities">By delivery.</param>
    internal static EveningAim Draw(Random random, int[] priorities) => new(
        random.Next(3) == 0 ? 0 : MostSteps * Square(random.NextDouble()),
        random.Next(3) == 0 ? 0 : random.NextDouble(),
        random.Next(3) == 0 ? 0 : MostWorthOfDate * Square(random.NextDouble()),
        random.NextDouble(),
        random.NextDouble(),
        ByPriority(priorities, random.Next(2) == 0 ? 0 : random.NextDouble() * MostByPriority));

    /// <summary>One that is near.</summary>
    internal EveningAim Near(Random random) => new(
        Changed(random, Steps, 1, MostSteps),
        Changed(random, Dates, 0.2, 1),
        Changed(random, WorthOfDate, 3, MostWorthOfDate),
        Changed(random, WorthOfRest, 0.2, 1),
        Changed(random, Chance, 0.2, 1),
        random.Next(2) == 0 || Later.Length == 0 ? Later : OneMoved(random));

    private static long[] ByPriority(int[] priorities, double minutes) => [.. priorities.Select(p => (long)((p - 1) * minutes))];

    private long[] OneMoved(Random random)
    {
        long[] later = [.. Later];
        later[random.Next(later.Length)] += (long)(Spread(random) * Moved);
        return later;
    }

    /// <summary>About zero, mostly within one.</summary>
    private static double Spread(Random random) => (random.NextDouble() + random.NextDouble() + random.NextDouble() - 1.5) * 2;

    private static double Square(double value) => value * value;

    /// <summary>Every second time another value, mostly within some distance.</summary>
    private static double Changed(Random random, double value, double distance, double most) =>
        random.Next(2) == 0 ? value : Math.Clamp(value + (Spread(random) * distance), 0, most);
}
