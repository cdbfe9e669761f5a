using System.Collections.Immutable;
using Scrapwright.Core.Finishing;
using Scrapwright.Core.Fits;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Chances;
using Scrapwright.Core.Sheets;
using Scrapwright.Core.Shops;

namespace Scrapwright.Cli.Output;

/// <summary>A plan, or why there is none, in plain lines.</summary>
internal static class PlanText
{
    internal static IEnumerable<string> Lines(Plan plan)
    {
        var total = plan.Made.Length + plan.Unmade.Length;
        yield return $"{plan.Request.Workshop}: {plan.Made.Length} of {total} {(total == 1 ? "gift" : "gifts")}, {Count(plan.GlueUps.Length, "glue-up")}, {Count(plan.Steps.Length, "step")}.";
        foreach (var made in plan.Made)
        {
            var glueUps = plan.GlueUps.Where(glueUp => glueUp.IsFor(made.Gift)).Select(glueUp => glueUp.Id).ToArray();
            yield return $"  {made.Gift}: {Count(made.Parts.Length, "part")}{(glueUps.Length == 0 ? "" : $" from {string.Join(", ", glueUps)}")}{Odds(made.ChancePerMille)}";
            foreach (var glueUp in plan.GlueUps.Where(glueUp => glueUp.IsFor(made.Gift) && glueUps.Length > 1))
                yield return $"    {glueUp.Id} holds its size {ChanceWords.Both(glueUp.ChancePerMille)}";
        }

        if (!plan.Faced.IsEmpty) yield return "Glued face to face first:";
        foreach (var board in plan.Faced) yield return $"  {FaceWords.Of(board, size => LengthFormatter.Format(size, Style(plan.Request.Shop)))}";
        foreach (var line in Unmade(plan.Unmade, plan.Request.Shop)) yield return line;
        yield return "How good it is:";
        foreach (var level in plan.Levels) yield return $"  {LevelText.Title(level.Kind)}: {LevelText.Figure(level, plan)}, {LevelText.Verdict(level, plan)}";
        var index = PlanIndex.Of(plan);
        var differences = GiftDifference.WorthALook(index);
        if (!differences.IsEmpty) yield return "Beside each other:";
        foreach (var pair in differences)
            yield return $"  {pair.One}, {pair.Other} ({pair.Circle}): {pair.Words}{(pair.DeltaE is { } deltaE ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $", mean ΔE {deltaE:0.0}") : "")}";
        foreach (var line in Fits(index)) yield return line;
        if (!plan.Shopping.IsEmpty) yield return "To buy:";
        foreach (var item in plan.Shopping) yield return $"  {Shopping(item, plan.Request.Shop)}";
        var usedUp = Consumables.For(plan, index.Designs);
        if (!usedUp.IsEmpty) yield return "Used up on the way:";
        foreach (var item in usedUp) yield return $"  {item.What}{(item.Text.Length == 0 ? "" : $": {item.Beside}")} ({item.Why})";
    }

    // What holds all year needs no line of its own.
    private static IEnumerable<string> Fits(PlanIndex index)
    {
        var fits = PlanFits.Of(index);
        if (fits.IsEmpty) yield break;
        var shop = index.Plan.Request.Shop;
        var bad = fits.Where(fit => fit.Season.Verdict is not FitVerdict.Good).ToList();
        yield return $"Fits through the year: {fits.Length - bad.Count} of {fits.Length} hold.";
        foreach (var fit in bad)
            yield return $"  {fit.Gift}, {fit.Fit.HeldTitle} {fit.Fit.Title}: {FitWords.Verdict(fit.Season, shop)} {FitWords.Remedy(fit.Fit, fit.Season, shop)}";
    }

    /// <summary>What differs from the plan before.</summary>
    internal static IEnumerable<string> Changes(IReadOnlyCollection<PlanChange> changes)
    {
        if (changes.Count == 0)
        {
            yield return "Nothing changed from the plan before.";
            yield break;
        }

        yield return "Changed from the plan before:";
        foreach (var change in changes) yield return $"  {change.Text}";
    }

    internal static IEnumerable<string> Unmade(IReadOnlyCollection<UnmadeGift> unmade, Shop shop)
    {
        if (unmade.Count == 0) yield break;
        yield return "Not made:";
        foreach (var gift in unmade)
        {
            foreach (var reason in gift.Reasons) yield return $"  {gift.Gift}: {ReasonText.Write(reason, Style(shop))}";
        }
    }

    private static string Odds(int? perMille) => perMille is { } chance ? $", meets size {ChanceWords.Both(chance)}" : "";

    internal static LengthStyle Style(Shop shop) => new() { Unit = shop.Unit, Denominator = shop.Denominator };

    internal static string Count(int count, string what) => $"{count} {what}{(count == 1 ? "" : "s")}";

    internal static string Shopping(ShoppingItem item, Shop shop)
    {
        string[] sizes = [.. new[] { item.Size, item.Length }.Where(size => !size.IsZero).Select(size => LengthFormatter.Format(size, Style(shop)))];
        return $"{item.Count} × {item.What}{(sizes.Length == 0 ? "" : " " + string.Join(" × ", sizes))} (for {item.Why})";
    }
}
