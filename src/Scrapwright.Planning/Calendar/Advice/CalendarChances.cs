using Scrapwright.Core.Calendar;

namespace Scrapwright.Planning.Calendar.Advice;

/// <summary>Says how likely a calendar holds.</summary>
public static class CalendarChances
{
    /// <summary>The chances of a calendar. The same calendar and rules give the same chances.</summary>
    /// <param name="calendar">A calendar that passed its audit.</param>
    /// <param name="rules">How to draw; null for the usual.</param>
    /// <param name="cancellationToken">Ends it.</param>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A rule out of range.</exception>
    public static CalendarChance Of(WorkCalendar calendar, ChanceRules? rules = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(calendar);
        var checkedRules = rules ?? new();
        ArgumentOutOfRangeException.ThrowIfLessThan(checkedRules.Runs, 1, nameof(rules));
        ArgumentOutOfRangeException.ThrowIfLessThan(checkedRules.StartRuns, 1, nameof(rules));
        ArgumentOutOfRangeException.ThrowIfNegative(checkedRules.SpreadFactor, nameof(rules));
        if (checkedRules.AskedPerMille is < 1 or > 1000) throw new ArgumentOutOfRangeException(nameof(rules), checkedRules.AskedPerMille, "1 to 1000 of a thousand.");
        return new ChanceMaker(calendar, checkedRules, cancellationToken).Make();
    }
}
