using Scrapwright.Core.Designs;
using Scrapwright.Core.Finishing;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Sheets;

/// <summary>What stands under the sanding, gluing and finishing steps of a gift. Few lines: a gift shall stay on its sheets.</summary>
internal static class FinishingLines
{
    private const string NoSource = ". Common practice, no source";

    /// <summary>The grits of a sanding step; empty when there is no way from the first to the last.</summary>
    internal static string Grits(SandingAdvice advice) =>
        SandingAdvice.Grits(advice.Sequence) is { IsEmpty: false } grits ? string.Join(", ", grits) : "";

    /// <param name="plan">The plan.</param>
    /// <param name="gift">The gift.</param>
    /// <param name="product">What its design gives.</param>
    /// <param name="step">The step.</param>
    /// <param name="first">True for the gift's first gluing step: the others need not say it again.</param>
    internal static IEnumerable<(string Text, bool Warns)> For(Plan plan, Gift gift, Product product, Step step, bool first) => step.Operation switch
    {
        Operation.Sand => SandingAdvice.For(plan, gift, product).Cautions.Select(c => (c, true)),
        Operation.Assemble when first => [(Gluing(plan.Request.Shop, product), false)],
        Operation.Finish => Finishing(FinishAdvice.For(plan, gift, product)),
        _ => [],
    };

    // Assembly is at room temperature: no month is known where sheets are printed. The sources stand in the table, not on the bench.
    private static string Gluing(Shop shop, Product product)
    {
        if (GlueTable.Find(shop.Glue) is not { } glue) return $"Glue “{shop.Glue}” is not in the table: times are on its label.";
        var times = ClampTime.At(glue, ClampTime.TableCelsius) is ClampTime.Sets sets
            ? $": open {Amounts.Minutes(sets.OpenMinutes)}, clamps {Amounts.Minutes(sets.ClampMinutes)} at {Amounts.Temperature(ClampTime.TableCelsius, shop.Unit)}"
            : "";
        var mitres = product.Parts.Any(p => p.Mitres != MitredEnds.None) ? $" {glue.EndGrain.Replace(NoSource, "", StringComparison.Ordinal)}." : "";
        return $"{glue.Name}{times}.{mitres}";
    }

    private static IEnumerable<(string, bool)> Finishing(FinishAdvice advice)
    {
        yield return (string.Join(" ", advice.Facts.Select(f => f.Name == "Finish" ? $"{f.Text}." : $"{f.Name}: {f.Text}.")), false);
        // A drying oil's note is small beside its rags.
        foreach (var caution in advice.Finish is { IsDryingOil: true } ? advice.Cautions.Take(1) : advice.Cautions) yield return (caution, true);
    }
}
