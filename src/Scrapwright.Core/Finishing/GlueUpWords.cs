using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Finishing;

/// <summary>The advice for a glue-up in words.</summary>
internal static class GlueUpWords
{
    internal static IEnumerable<AdviceFact> Facts(GlueUpAdvice advice, Shop shop)
    {
        if (advice.Lines == 0) yield break;
        var unit = shop.Unit;
        var lines = $"{advice.Lines} {(advice.Lines == 1 ? "line" : "lines")}, {Amounts.Area(advice.GlueArea, unit)}";
        yield return new("Glue", advice is { Glue: { } glue, Grams: { } grams }
            ? $"{glue.Name}: {Amounts.Grams(grams, unit)} for {lines}"
            : $"{advice.GlueKey}: {lines}; its label says how much");
        if (advice is { Kilopascals: { } pressure, Newtons: { } newtons })
        {
            var clamps = advice.ClampsByForce is { Least: > 0 } count ? $", {count} {(count.Most == 1 ? "clamp" : "clamps")} by force" : "";
            yield return new("Press", $"{Amounts.Pressure(pressure, unit)}, {Amounts.Force(newtons, unit)} in all{clamps}");
        }

        yield return new("Caul", advice.Caul.IsZero ? "none needed for pressure" : $"{Size(advice.Caul, shop)} thick along both edges");
        if (advice.Time is ClampTime.Sets sets)
        {
            yield return new("Clamps", $"{Amounts.Minutes(sets.ClampMinutes)} at {Amounts.Temperature(advice.TemperatureCelsius, unit)}, plane it after {Amounts.Hours(sets.CureHours)}");
        }
    }

    internal static IEnumerable<string> Cautions(GlueUpAdvice advice, Shop shop, string[] species)
    {
        if (advice.Lines == 0) yield break;
        var unit = shop.Unit;
        if (advice.Glue is null) yield return $"Glue “{advice.GlueKey}” is not in the table: pressure and times are on its label.";
        if (advice.Time is ClampTime.TooCold cold)
            yield return $"Too cold at {Amounts.Temperature(advice.TemperatureCelsius, unit)}: glue, wood and air need {Amounts.Temperature(cold.MinimumCelsius, unit)} or more.";
        if (advice is { Time: ClampTime.Sets { IsCool: true }, Glue: { } glue })
            yield return $"Cool at {Amounts.Temperature(advice.TemperatureCelsius, unit)}: some makers ask for {Amounts.Temperature(glue.MinimumCelsius.Most, unit)}. Read the label.";
        if (advice is { Goes: > 1, Time: ClampTime.Sets open })
            yield return $"About {Minutes(advice.SpreadSeconds)} to spread and close; the glue is open {open.OpenMinutes} min. Glue it in {advice.Goes} parts, then those together.";
        if (advice.ClampsByForce is { } count && count.Least > advice.ClampsPlanned)
            yield return $"The plan counts on {advice.ClampsPlanned} clamps; by force {count}. Tight, flat joints bond at less.";
        if (advice is { Kilopascals: not null, ClampsByForce: null }) yield return "No clamp on the rack reaches across.";
        var oily = species.Where(OilyWoods.IsOily).Select(Name).ToArray();
        if (oily.Length > 0) yield return $"Oily: {string.Join(", ", oily)}. {advice.Glue?.Oily ?? "Ask the glue's label"}.";
        var unknown = species.Where(key => SpeciesTable.Find(key) is null).ToArray();
        if (unknown.Length > 0) yield return $"Not in the species table: {string.Join(", ", unknown)}. Pressure without it.";
    }

    private static string Name(string key) => SpeciesTable.Find(key)?.Name ?? key;

    // Begun minutes; 60 seconds each by definition.
    private static string Minutes(int seconds) => $"{(seconds + 59) / 60} min";

    // Quarters at least: our own choice.
    internal static string Size(Length length, Shop shop) =>
        LengthFormatter.Format(length, new LengthStyle { Unit = shop.Unit, Denominator = Math.Max(4, shop.Denominator), Approximate = false });
}
