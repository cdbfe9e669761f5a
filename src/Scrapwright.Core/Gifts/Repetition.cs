using System.Text.Json.Serialization;

namespace Scrapwright.Core.Gifts;

/// <summary>How an occasion comes back: on one day of every year, or not at all. In files and JSON it stands in words, see <see cref="RepetitionWords"/>.</summary>
[JsonConverter(typeof(RepetitionJsonConverter))]
public abstract record Repetition
{
    private Repetition()
    {
    }

    /// <summary>The day it falls on in a year; null when it does not come back.</summary>
    /// <param name="year">The year, 1 to 9999, in the Gregorian calendar.</param>
    /// <exception cref="ArgumentOutOfRangeException">No such year.</exception>
    public abstract DateOnly? FindIn(int year);

    /// <summary>It does not come back.</summary>
    public sealed record Never : Repetition
    {
        /// <inheritdoc/>
        public override DateOnly? FindIn(int year) => null;
    }

    /// <summary>Every year on one date. 29 February is kept on 28 February in a year that has none: a birthday is not left out.</summary>
    /// <param name="Month">1 to 12.</param>
    /// <param name="Day">1 to the last of that month; 29 in February.</param>
    public sealed record OnDate(int Month, int Day) : Repetition
    {
        /// <inheritdoc/>
        public override DateOnly? FindIn(int year) => new DateOnly(year, Month, Math.Min(Day, DateTime.DaysInMonth(year, Month)));
    }

    /// <summary>Every year on the first to fourth, or on the last, of one weekday in a month: the third Saturday of June.</summary>
    /// <param name="Month">1 to 12.</param>
    /// <param name="Which">1 to 4; <see cref="Last"/> for the last, which is the fourth or the fifth.</param>
    /// <param name="Weekday">The weekday.</param>
    public sealed record OnWeekday(int Month, int Which, DayOfWeek Weekday) : Repetition
    {
        /// <summary>For the last one of a month, as RFC 5545 counts.</summary>
        public const int Last = -1;

        /// <inheritdoc/>
        public override DateOnly? FindIn(int year)
        {
            var first = new DateOnly(year, Month, 1);
            var earliest = first.AddDays((Weekday - first.DayOfWeek + 7) % 7);
            if (Which != Last) return earliest.AddDays(7 * (Which - 1));
            var fifth = earliest.AddDays(28);
            return fifth.Month == Month ? fifth : earliest.AddDays(21);
        }
    }

    /// <summary>Every year so many days from Easter Sunday, as the moving feasts are.</summary>
    /// <param name="Days">Days after Easter Sunday, below zero before it; <see cref="Fewest"/> to <see cref="Most"/>, so that it never leaves the year.</param>
    public sealed record FromEaster(int Days) : Repetition
    {
        /// <summary>Easter is on 22 March at the earliest: 80 days before that is 1 January.</summary>
        public const int Fewest = -80;

        /// <summary>Easter is on 25 April at the latest: 250 days after that is 31 December.</summary>
        public const int Most = 250;

        /// <inheritdoc/>
        public override DateOnly? FindIn(int year) => EasterSunday.Of(year).AddDays(Days);
    }
}
