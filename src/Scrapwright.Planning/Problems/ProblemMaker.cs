using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Planning.Problems;

/// <summary>Works a request out into a <see cref="Problem"/>.</summary>
internal static class ProblemMaker
{
    private const int MostLayers = 3;

    internal static Problem Make(PlanRequest request)
    {
        var designs = request.DeriveDesigns();
        var weights = PriorityWeights.Of(request.Gifts);
        var gifts = ImmutableArray.CreateBuilder<GiftDemand>();
        foreach (var design in designs)
        {
            if (design.Outcome is DesignOutcome.Derived derived)
            {
                gifts.Add(new GiftDemand(gifts.Count, design.Gift, derived.Product, weights[design.Gift.Priority]));
            }
        }

        var panels = ImmutableArray.CreateBuilder<PanelCandidate>();
        var runs = ImmutableArray.CreateBuilder<RunDemand>();
        foreach (var gift in gifts)
        {
            var sharers = Risk.SharersOf(gift.Product);
            foreach (var part in gift.Product.Parts.Where(p => p.Kind == PartKind.Panel))
            {
                AddModes(panels, gift.Index, part, sharers, request.Shop);
            }

            foreach (var alike in gift.Product.Runs.GroupBy(r => SizesOf(r, gift.Product.Parts)))
            {
                runs.Add(new RunDemand(runs.Count, gift.Index, [.. alike], new SolidNeeds(alike.First(), gift.Product.Parts, request.Shop) { Sharers = sharers }));
            }
        }

        var offcuts = request.Pile.SelectMany(o => o.Pieces()).ToImmutableArray();
        var thinnest = panels.Select(p => p.Needs.StripThickness(Length.Zero)).Concat(runs.Select(r => r.Needs.StripThickness(Length.Zero))).DefaultIfEmpty(Length.Zero).Min();
        var needs = new PatternNeeds(
            [.. runs.Select(r => r.Needs.RoughWidth).Distinct().Order()],
            thinnest,
            panels.Any(p => p.Wish.Pattern == StripPattern.Accent)
                ? ReadableSize.Up(request.Shop.NarrowestStrip + (request.Shop.Allowances.EdgeJoint.Mean * 2), request.Shop.Unit)
                : Length.Zero);
        return new Problem
        {
            Request = request,
            Designs = designs,
            Gifts = gifts.ToImmutable(),
            Offcuts = offcuts,
            Patterns = [.. offcuts.SelectMany((o, i) => PatternMaker.For(o, i, needs, request.Shop))],
            Panels = panels.ToImmutable(),
            Runs = runs.ToImmutable(),
        };
    }

    /// <summary>What runs must share to be alike: their members' sizes and species wishes.</summary>
    private static string SizesOf(GrainRun run, ImmutableArray<Part> parts) =>
        string.Join(';', run.Members.Select(m => parts.First(p => p.Key == m.Part))
            .Select(p => $"{p.Length}|{p.Width}|{p.Thickness}|{string.Join(',', p.Species)}"));

    /// <summary>
    /// Every sensible number of layers and blanks: one glue-up for all copies, or two or three alike.
    /// A panel of a single blank is too short to work well when more than one is needed, and a layer nobody needs is not sawn.
    /// </summary>
    private static void AddModes(ImmutableArray<PanelCandidate>.Builder panels, int gift, Part part, int sharers, Shop shop)
    {
        var modes = new SortedSet<(int Layers, int Blanks)>();
        var mostGlueUps = part.Count <= 3 ? 1 : part.Count <= 8 ? 2 : 3;
        for (var layers = 1; layers <= Math.Min(MostLayers, part.Count); layers++)
        {
            for (var glueUps = 1; glueUps <= mostGlueUps; glueUps++)
            {
                var blanks = (part.Count + (layers * glueUps) - 1) / (layers * glueUps);
                if ((blanks > 1 || part.Count == 1) && layers * glueUps * blanks < part.Count + blanks && (glueUps == 1 || part.Wish?.Panels != SetPanels.One))
                {
                    modes.Add((layers, blanks));
                }
            }
        }

        if (part.Wish?.Panels == SetPanels.Each)
        {
            modes = [(1, 1)];
        }

        foreach (var (layers, blanks) in modes)
        {
            // Modes mix only where there may be three glue-ups.
            var slots = (part.Count + (layers * blanks) - 1) / (layers * blanks);
            var needs = new PanelNeeds(part, blanks, layers, shop) { Sharers = sharers * (mostGlueUps < 3 ? slots : Math.Max(slots, mostGlueUps)) };
            var widest = WidestRough(needs, shop);
            if (widest < needs.RoughWidth(part.Wish?.MinimumStrips ?? 1) || !IsAllowed(needs, shop))
            {
                continue;
            }

            for (var slot = 0; slot < slots; slot++)
            {
                panels.Add(new PanelCandidate(panels.Count, gift, part, needs, slot, widest));
            }
        }
    }

    private static Length WidestRough(PanelNeeds needs, Shop shop)
    {
        var clamps = Clamping.Needed(needs.Overlap + shop.KeepLength + shop.TableSaw.Kerf, shop);
        var widest = Clamping.WidestWith(clamps, shop);
        if (!shop.WorksSmallPiecesByHand)
        {
            widest = Length.Min(widest, shop.Planer.MaximumWidth);
        }

        return needs.Layers > 1 ? Length.Min(widest, shop.Bandsaw.ResawHeight) : widest;
    }

    private static bool IsAllowed(PanelNeeds needs, Shop shop)
    {
        var part = needs.Part;
        return Allows(Operation.FlattenPanel, needs.Overlap, part.Width, needs.PlanedThickness)
            && Allows(Operation.PlanePanel, needs.Overlap, part.Width, needs.PlanedThickness)
            && Allows(Operation.TrimWidth, needs.Overlap, part.Width, needs.PlanedThickness)
            && Allows(Operation.CrosscutBlanks, needs.Overlap, part.Width, needs.PlanedThickness)
            && (needs.Layers == 1 || Allows(Operation.Resaw, needs.Overlap, part.Width, needs.PlanedThickness));

        bool Allows(Operation operation, Length length, Length width, Length thickness) =>
            StationRules.Rule(operation, length, width, thickness, shop) is not StationRuling.Refused;
    }
}
