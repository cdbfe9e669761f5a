using System.Numerics;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>Whether the facts a plan was made from are such that numbers can be worked out from them at all.</summary>
internal sealed class RequestFacts(Findings findings)
{
    private static readonly Length Longest = Length.FromMillimetres(100_000);
    private static readonly Length Widest = Length.FromMillimetres(2_000);
    private static readonly Length Thickest = Length.FromMillimetres(500);
    private static readonly Length LargestWarp = Length.FromMillimetres(1_000);

    /// <summary>Looks at pile, gifts and shop.</summary>
    public void Check(PlanRequest request)
    {
        CheckPile(request);
        CheckGifts(request);
        CheckShop(request.Shop);
    }

    private void CheckPile(PlanRequest request)
    {
        long pieces = 0;
        foreach (var offcut in request.Pile)
        {
            var at = $"offcut {offcut.Label}";
            Within(at + " length", offcut.Length, Longest, aboveZero: true);
            Within(at + " width", offcut.Width, Widest, aboveZero: true);
            Within(at + " thickness", offcut.Thickness, Thickest, aboveZero: true);
            Within(at + " cup", offcut.Cup, LargestWarp);
            Within(at + " bow", offcut.Bow, LargestWarp);
            Within(at + " twist", offcut.Twist, LargestWarp);
            Known(at + " faces", offcut.Faces);
            findings.Require(offcut.Count is >= 1 and <= 10_000, at + " count", offcut.Count, "1 to 10000");
            findings.Require(SpeciesTable.FindKey(offcut.Species) is not null, at + " species", offcut.Species, "a known species");
            foreach (var defect in offcut.Defects)
            {
                Within(at + " defect from", defect.From, Longest);
                Within(at + " defect to", defect.To, Longest);
                findings.Require(defect.From <= defect.To, at + " defect", defect.From, $"at most {defect.To}");
                if (defect.Across is { } across)
                {
                    Within(at + " defect across from", across.From, Widest);
                    Within(at + " defect across to", across.To, Widest);
                    findings.Require(across.From <= across.To, at + " defect across", across.From, $"at most {across.To}");
                }
            }

            pieces += offcut.Count;
        }

        if (findings.Require(pieces <= 100_000, "request.pile", pieces, "at most 100000 pieces") && findings.AreNone)
        {
            Unique("offcut label", request.Pile.SelectMany(o => o.Pieces()).Select(o => o.Label));
        }
    }

    private void CheckGifts(PlanRequest request)
    {
        Unique("gift label", request.Gifts.Select(g => g.Label));
        var weight = request.Gifts.GroupBy(g => g.Priority).Aggregate(BigInteger.One, (product, group) => product * (group.Count() + 1));
        findings.Require(weight <= long.MaxValue, "request.gifts", "too many priorities and gifts", "weights that fit 64 bits");
    }

    private void CheckShop(Shop shop)
    {
        foreach (var (name, size, aboveZero) in Sizes(shop))
        {
            Within("shop " + name, size, Longest, aboveZero);
        }

        Known("shop unit", shop.Unit);
        findings.Require(shop.ConfidencePercent is >= 50 and <= 99, "shop confidence", shop.ConfidencePercent, "50 to 99");
        findings.Require(shop.MinimumContrast is >= 0 and <= 100, "shop contrast", shop.MinimumContrast, "0 to 100");
        foreach (var time in shop.Times)
        {
            var least = Math.Min(time.SetUpMinutes, Math.Min(time.EachMinutes, time.WaitMinutes));
            var most = Math.Max(time.SetUpMinutes, Math.Max(time.EachMinutes, time.WaitMinutes));
            findings.Require(least >= 0 && most <= 100_000, $"shop time {time.Operation}", least < 0 ? least : most, "0 to 100000 minutes");
        }

        foreach (var clamp in shop.Clamps)
        {
            findings.Require(clamp.Count is >= 0 and <= 10_000, $"shop clamp {clamp.Name}", clamp.Count, "0 to 10000");
        }

        foreach (var rod in shop.Rods)
        {
            findings.Require(rod.OnHand is >= 0 and <= 10_000, $"shop rod {rod.Species}", rod.OnHand, "0 to 10000");
        }
    }

    private static IEnumerable<(string Name, Length Size, bool AboveZero)> Sizes(Shop shop)
    {
        yield return ("jointer width", shop.Jointer.MaximumWidth, false);
        yield return ("jointer length", shop.Jointer.MinimumLength, false);
        yield return ("jointer thickness", shop.Jointer.MinimumThickness, false);
        yield return ("jointer least width", shop.Jointer.MinimumWidth, false);
        yield return ("planer width", shop.Planer.MaximumWidth, false);
        yield return ("planer length", shop.Planer.MinimumLength, false);
        yield return ("planer thickness", shop.Planer.MinimumThickness, false);
        yield return ("planer most thickness", shop.Planer.MaximumThickness, false);
        yield return ("table saw kerf", shop.TableSaw.Kerf, false);
        yield return ("table saw rip length", shop.TableSaw.MinimumRipLength, false);
        yield return ("table saw rip width", shop.TableSaw.MinimumRipWidth, false);
        yield return ("table saw depth", shop.TableSaw.MaximumDepth, false);
        yield return ("table saw crosscut", shop.TableSaw.MaximumCrosscut, false);
        yield return ("bandsaw kerf", shop.Bandsaw.Kerf, false);
        yield return ("bandsaw resaw height", shop.Bandsaw.ResawHeight, false);
        yield return ("bandsaw length", shop.Bandsaw.MinimumLength, false);
        yield return ("clamp spacing", shop.ClampSpacing, true);
        yield return ("narrowest strip", shop.NarrowestStrip, false);
        yield return ("keep length", shop.KeepLength, false);
        yield return ("keep width", shop.KeepWidth, false);
        yield return ("keep thickness", shop.KeepThickness, false);
        var a = shop.Allowances;
        foreach (var allowance in (Allowance[])[a.FaceJoint, a.FacePlane, a.EdgeJoint, a.PanelFlatten, a.ResawCleanUp, a.Sand, a.EndTrim, a.WidthTrim])
        {
            yield return ("allowance", allowance.Mean, false);
            yield return ("spread of an allowance", allowance.Spread, false);
        }

        foreach (var clamp in shop.Clamps)
        {
            yield return ("clamp reach", clamp.Reach, false);
        }

        foreach (var bit in shop.DrillBits)
        {
            yield return ("drill bit", bit, false);
        }

        foreach (var rod in shop.Rods)
        {
            yield return ("rod diameter", rod.Diameter, false);
            yield return ("rod length", rod.Length, false);
        }
    }

    private void Within(string at, Length size, Length most, bool aboveZero = false) =>
        findings.Require(
            size <= most && (aboveZero ? size > Length.Zero : size >= Length.Zero), at, size, $"{(aboveZero ? "above" : "from")} 0 to {most}");

    private void Known<T>(string at, T value)
        where T : struct, Enum => findings.Require(Enum.IsDefined(value), at, value, "a known word");

    private void Unique(string what, IEnumerable<string> labels)
    {
        foreach (var label in labels.GroupBy(l => l, StringComparer.Ordinal).Where(g => g.Count() > 1))
        {
            findings.Add(what, $"{label.Key} twice", "each label once");
        }
    }
}
