using System.Globalization;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Plans.Chances;

namespace Scrapwright.Cli.Output;

/// <summary>Chances of a calendar as lines of text.</summary>
internal static class ChanceText
{
    /// <summary>Every gift, then all together.</summary>
    internal static IEnumerable<string> Lines(CalendarChance chance)
    {
        yield return $"How sure it is, of {chance.Runs} times with shorter and longer tasks:";
        foreach (var gift in chance.Gifts) yield return $"  {gift.Gift}: {Line(gift, chance)}";
        if (chance.Gifts.Length > 1) yield return $"  everything: {Line(chance.All, chance)}";
    }

    private static string Line(ReadyChance gift, CalendarChance chance) => string.Join("; ", Parts(gift, chance.Runs, ChanceWords.Odds(chance.AskedPerMille)));

    private static IEnumerable<string> Parts(ReadyChance gift, int runs, string asked)
    {
        if (gift.PerMille is { } perMille) yield return perMille == 0 ? $"in time less than once in {Math.Min(runs, 1000)} times" : $"in time {ChanceWords.Both(perMille)}";
        yield return gift.ReadyBy is { } day ? $"ready by {Day(day)} {asked}" : $"on no day ready {asked}";
        if (gift.PerMille is null) yield break;
        yield return gift.StartBy is { } start ? $"start by {Day(start)}" : "no evening left to start in time";
        if (gift.StartBy is not null && gift.SafeStartBy is null) yield return $"no start is early enough to be in time {asked}";
        if (gift.EarlierStartBy is { } safe) yield return $"by {Day(safe)} to be in time {asked}";
        if (gift.TooFewEvenings is { } keep) yield return $"keep {keep} evening{(keep == 1 ? "" : "s")} free at the end instead of {gift.EveningsLeft}";
    }

    private static string Day(DateOnly day) => day.ToString("dddd d MMMM", CultureInfo.InvariantCulture);

    private static string Day(DateTimeOffset moment) => Day(DateOnly.FromDateTime(moment.DateTime));
}
