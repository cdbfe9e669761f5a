using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Finishing;

/// <summary>The advice for finishing in words.</summary>
internal static class FinishWords
{
    internal static IEnumerable<AdviceFact> Facts(string key, Finish? finish, Area area, Band? millilitres, LengthUnit unit)
    {
        var surface = Amounts.Area(area, unit);
        yield return new("Finish", finish is null || millilitres is null
            ? $"{key}, {surface}"
            : $"{finish.Name}: {Amounts.Millilitres(millilitres.Value, unit)} for {finish.Coats} coats on {surface}");
        if (finish is null) yield break;
        yield return new("Each coat", Coat(finish));
        var hard = finish.CureDays.Most == 0 ? "" : finish.CureDays is { Least: 0 } ? ", never hard" : $", hard after {Amounts.Days(finish.CureDays)}";
        yield return new("Next coat", $"after {Amounts.Minutes(finish.RecoatMinutes)}, handle after {Amounts.Hours(finish.HandleHours)}{hard}");
        yield return new("Food", $"{(finish.FoodDays.Least > 0 ? $"after {Amounts.Days(finish.FoodDays)}. " : "")}{finish.Food}");
    }

    internal static IEnumerable<string> Cautions(string key, Finish? finish, double? celsius, LengthUnit unit)
    {
        if (finish is null)
        {
            yield return $"Finish “{key}” is not in the table: steps, times and cautions are on its label.";
            yield return $"If it has oil in it: {char.ToLowerInvariant(OilyRags.Caution[0])}{OilyRags.Caution[1..]}";
            yield break;
        }

        if (finish.IsDryingOil) yield return OilyRags.Caution;
        if (celsius is { } warmth && (warmth < finish.TemperatureCelsius.Least || warmth > finish.TemperatureCelsius.Most))
            yield return $"{Amounts.Temperature(warmth, unit)} in the shop: it wants {Amounts.Temperature(finish.TemperatureCelsius.Least, unit)} to {Amounts.Temperature(finish.TemperatureCelsius.Most, unit)}.";
        yield return $"{finish.Note}.";
    }

    // The first coat's steps in one line: "flood the wood and keep it wet, 15 min; …".
    private static string Coat(Finish finish)
    {
        var steps = FinishSteps.For(finish).Where(s => s.Coat == 1).ToArray();
        return string.Join("; ", steps.Select((s, i) => FirstLetter.Small(s.Text.TrimEnd('.')) + (i + 1 < steps.Length && s.WaitMinutes > 0 ? $", {s.WaitMinutes} min" : "")))
            + (finish.Method == FinishMethod.Brush ? "; sand lightly between coats" : "");
    }
}
