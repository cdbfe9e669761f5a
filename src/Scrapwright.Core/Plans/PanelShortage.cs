using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Plans;

/// <summary>What the panels of one part lack.</summary>
internal sealed class PanelShortage(Part part, GiftMargins margins, Shop shop)
{
    private const int MostLayers = 3;
    private const int MostStrips = 24;

    /// <summary>The limit that no way of making the panels keeps to; null when there is a way.</summary>
    public Reason.BeyondShop? FindLimit()
    {
        Reason.BeyondShop? first = null;
        foreach (var way in Ways(1))
        {
            if (Limit(way) is not { } limit)
            {
                return null;
            }

            first ??= limit;
        }

        return first;
    }

    /// <summary>The strips that the way lacking fewest lacks; null when nothing is missing. Wood that is used is taken out of the list.</summary>
    public Reason.MissingStrips? FindMissing(List<SpareWood> wood)
    {
        (Way Way, PanelFill Fill)? best = null;
        for (var layers = 1; layers <= MostLayers && best is not { Fill.Missing: 0 }; layers++)
        {
            foreach (var way in Ways(layers).Where(w => Limit(w) is null))
            {
                var fill = PanelFill.Of(way.Needs, way.GlueUps, way.Strips, RoughStrip(way), wood, shop);

                // Layers ask for thicker wood than most have to hand, so they only count where nothing is missing.
                var mayCount = layers == 1 || fill.Missing == 0;
                if (mayCount && (best is not { } b
                    || (fill.Missing, way.GlueUps * way.Strips).CompareTo((b.Fill.Missing, b.Way.GlueUps * b.Way.Strips)) < 0))
                {
                    best = (way, fill);
                }
            }
        }

        if (best is not { } found)
        {
            return null;
        }

        wood.RemoveAll(found.Fill.Used.Contains);
        return found.Fill.Missing == 0 ? null : new Reason.MissingStrips(
            part.Key,
            found.Fill.Missing,
            found.Fill.Tone,
            RoughStrip(found.Way),
            ReadableSize.Up(found.Way.Needs.Overlap, shop.Unit),
            SpareWood.RoughThickness(found.Way.Needs.StripThickness, shop));
    }

    /// <summary>How light a colour is.</summary>
    public static Tone ToneOf(LabColour colour) => colour.L switch
    {
        >= 70 => Tone.Light,
        < 50 => Tone.Dark,
        _ => Tone.Middling,
    };

    private IEnumerable<Way> Ways(int layers)
    {
        var wish = part.Wish!;
        for (var blanks = 1; blanks <= part.Count; blanks++)
        {
            var glueUps = Shares(part.Count, blanks * layers);
            if (blanks > 1 && glueUps == Shares(part.Count, (blanks - 1) * layers))
            {
                continue; // Shorter panels give as much.
            }

            for (var strips = Math.Max(1, wish.MinimumStrips); strips <= Math.Min(wish.MaximumStrips, MostStrips); strips++)
            {
                yield return new Way(new PanelNeeds(part, blanks, layers, shop) { Margins = margins.OfPanel(part.Key, blanks * layers, layers) }, glueUps, strips);
            }
        }
    }

    private static int Shares(int whole, int share) => ((whole - 1) / share) + 1;

    private Length RoughStrip(Way way) => ReadableSize.Up(way.NetStrip + (shop.Allowances.EdgeJoint.Mean * 2), shop.Unit);

    private Reason.BeyondShop? Limit(Way way)
    {
        var needs = way.Needs;
        var width = way.Width;
        var reach = shop.Clamps.Where(c => c.Count > 0).Select(c => c.Reach).DefaultIfEmpty().Max();
        if (width > reach)
        {
            return new Reason.BeyondShop(part.Key, "reach of the clamps", width, reach);
        }

        var clamps = shop.Clamps.Where(c => c.Reach >= width).Sum(c => (long)c.Count);
        var spaces = Math.Max(1, ((needs.Overlap.Picometres - 1) / shop.ClampSpacing.Picometres) + 1);
        if (spaces + 1 > clamps)
        {
            return new Reason.BeyondShop(part.Key, "length that the clamps hold", needs.Overlap, shop.ClampSpacing * (clamps - 1));
        }

        if (way.NetStrip < shop.NarrowestStrip)
        {
            return new Reason.BeyondShop(part.Key, "narrowest strip in a glue-up", way.NetStrip, shop.NarrowestStrip);
        }

        return Refusal(way, width);
    }

    private Reason.BeyondShop? Refusal(Way way, Length width)
    {
        var needs = way.Needs;
        foreach (var (operation, across) in (ReadOnlySpan<(Operation, Length)>)
            [(Operation.FlattenPanel, width), (Operation.Resaw, width), (Operation.PlanePanel, width), (Operation.TrimWidth, part.Width), (Operation.CrosscutBlanks, part.Width)])
        {
            if (operation == Operation.Resaw && needs.Layers == 1)
            {
                continue;
            }

            if (StationRules.Rule(operation, needs.Overlap, across, needs.PlanedThickness, shop) is StationRuling.Refused refused)
            {
                return new Reason.BeyondShop(part.Key, refused.Limit, refused.Found, refused.Expected);
            }
        }

        return null;
    }

    private sealed record Way(PanelNeeds Needs, int GlueUps, int Strips)
    {
        public Length Width { get; } = Needs.RoughWidth(Strips);

        public Length NetStrip => Width.Divide(Strips, Rounding.Up);
    }
}
