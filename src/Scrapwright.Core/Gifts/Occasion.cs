namespace Scrapwright.Core.Gifts;

/// <summary>A date and the gifts due on it; most come back every year.</summary>
public sealed record Occasion
{
    /// <summary>For so many days after its date it stays there, so that late gifts stay late and can be said to be given; then it goes on to its next date. [days], our own choice</summary>
    public const int DaysOfGrace = 31;

    // What comes back every year comes back after more than half a year, also when it was once held earlier or later.
    private const int LeastDaysBetween = 183;

    /// <summary>Its name, unique in a workshop; gifts name it.</summary>
    public required string Name { get; init; }

    /// <summary>The date it is on, or was on: from here it goes on by <see cref="Repeats"/>. It may be another than the usual one: once held a week later, it still comes back as usual.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>How it comes back.</summary>
    public Repetition Repeats { get; init; } = new Repetition.Never();

    /// <summary>Anything.</summary>
    public string Note { get; init; } = "";

    /// <summary>The date after <see cref="Date"/>: the first by its repetition that is more than half a year away. Null when it does not come back, or after the year 9998.</summary>
    public DateOnly? FindNext() => FindNext(Date);

    /// <summary>
    /// The date its gifts are due on, seen from a day: its first date that is not over by more than <see cref="DaysOfGrace"/>. One that does not come back stays on its date.
    /// </summary>
    /// <param name="today">The day it is seen from.</param>
    public DateOnly StandsOn(DateOnly today)
    {
        var date = Date;
        while (date.DayNumber + DaysOfGrace < today.DayNumber && FindNext(date) is { } next) date = next;
        return date;
    }

    private DateOnly? FindNext(DateOnly date)
    {
        for (var year = date.Year; year <= Math.Min(date.Year + 2, DateOnly.MaxValue.Year - 1); year++)
        {
            if (Repeats.FindIn(year) is { } next && next.DayNumber - date.DayNumber >= LeastDaysBetween) return next;
        }

        return null;
    }
}
