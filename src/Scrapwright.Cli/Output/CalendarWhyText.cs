using Scrapwright.Core.Calendar;

namespace Scrapwright.Cli.Output;

/// <summary>What holds a calendar up, and what could be done, as lines of text.</summary>
internal static class CalendarWhyText
{
    /// <summary>All of it.</summary>
    internal static IEnumerable<string> Lines(CalendarWhy why)
    {
        if (why.LongerSearchHelps) yield return "A longer search finds a better calendar: raise --seconds. What follows is counted from that one.";
        if (!why.Alternatives.IsEmpty) yield return "What could be done:";
        foreach (var alternative in why.Alternatives) yield return $"  {alternative.Question} Then {Names(alternative.InTime)} {(alternative.InTime.Length == 1 ? "is" : "are")} in time{Late(alternative)}.";
        yield return why.HoldUps.IsEmpty ? "Nothing that was tried makes it sooner by a day." : "What holds it up:";
        foreach (var holdUp in why.HoldUps) yield return $"  with {holdUp.What}: {string.Join("; ", Gains(holdUp))}";
        if (!why.NoGain.IsEmpty) yield return $"Tried without gain: {string.Join("; ", why.NoGain)}.";
        if (!why.NotTried.IsEmpty) yield return $"No time to try: {string.Join("; ", why.NotTried)}.";
    }

    private static IEnumerable<string> Gains(HoldUp holdUp)
    {
        if (!holdUp.InTime.IsEmpty) yield return $"{Names(holdUp.InTime)} in time";
        if (holdUp.HoursLessLate > 0) yield return $"{holdUp.HoursLessLate} hour{(holdUp.HoursLessLate == 1 ? "" : "s")} less late in all";
        if (holdUp.SoonerDays > 0) yield return $"the last gift {holdUp.SoonerDays} day{(holdUp.SoonerDays == 1 ? "" : "s")} sooner";
        yield return string.Join(", ", holdUp.Levels.Where(l => l.Kind == ScheduleLevelKind.AllReady || (l.Kind == ScheduleLevelKind.Lateness && l.Value > 0)).Select(CalendarText.Figure));
    }

    private static string Late(CalendarAlternative alternative) => alternative.LateThen.IsEmpty ? "" : $"; late then: {Names(alternative.LateThen)}";

    private static string Names(IEnumerable<string> gifts) => string.Join(", ", gifts);
}
