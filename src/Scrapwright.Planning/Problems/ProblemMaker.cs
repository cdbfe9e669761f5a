using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Core.Shops;

namespace Scrapwright.Planning.Problems;

/// <summary>Works a request out into a <see cref="Problem"/>.</summary>
internal static class ProblemMaker
{
    private const int MostLayers = 3;

    internal static Problem Make(PlanRequest request, Plan? former = null)
    {
        var designs = request.DeriveDesigns();
        var done = DoneWork.Of(request, designs);
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
        GiftMargins[] margins = [.. gifts.Select(g => GiftMargins.Of(g.Product, request.Shop))];
        foreach (var gift in gifts)
        {
            var inHand = margins[gift.Index];
            foreach (var part in gift.Product.Parts.Where(p => p.Kind == PartKind.Panel))
            {
                if (done.StillNeeded(gift.Gift.Label, part) is > 0 and var count)
                {
                    AddModes(panels, gift.Index, part, count, inHand, request.Shop);
                }
            }

            foreach (var alike in gift.Product.Runs.Where(r => !done.IsCut(gift.Gift.Label, r.Mark)).GroupBy(r => SizesOf(r, gift.Product.Parts)))
            {
                runs.Add(new RunDemand(runs.Count, gift.Index, [.. alike], new SolidNeeds(alike.First(), gift.Product.Parts, request.Shop) { Margins = inHand.OfBoard(alike.First().Mark) }));
            }
        }

        var longest = request.Pile.Select(o => o.Length).DefaultIfEmpty(Length.Zero).Max();
        foreach (var (shares, needs) in SharedPanels.Of(gifts, margins, done, longest, request.Shop))
        {
            AddShared(panels, shares, needs, request.Shop);
        }

        DoneParts.Add(panels, runs, gifts, margins, done, request.Shop);
        var offcuts = request.Pile.SelectMany(o => o.Pieces()).ToImmutableArray();
        var thinnest = panels.Select(p => p.Needs.StripThickness(Length.Zero)).Concat(runs.Select(r => r.Needs.StripThickness(Length.Zero))).DefaultIfEmpty(Length.Zero).Min();
        var patternNeeds = new PatternNeeds(
            [.. runs.Select(r => r.Needs.RoughWidth).Distinct().Order()],
            thinnest,
            panels.Any(p => p.Wish.Pattern == StripPattern.Accent)
                ? ReadableSize.Up(request.Shop.NarrowestStrip + (request.Shop.Allowances.EdgeJoint.Mean * 2), request.Shop.Unit)
                : Length.Zero);
        var saved = request.Choices.SavedIn(request.Pile);
        ImmutableArray<OffcutPattern> patterns = [.. offcuts.SelectMany((o, i) => DoneParts.FindPattern(done, o, i, saved.Contains(o.Label), request.Shop) is { } cut ? [cut]
            : saved.Contains(o.Label) || done.LeftAlone.Contains(o.Label) ? [] : PatternMaker.For(o, i, patternNeeds, request.Shop))];
        var problem = new Problem
        {
            Request = request,
            Done = done,
            Former = former,
            Before = former is null ? [] : FormerStrips.Of(former),
            Designs = designs,
            Gifts = gifts.ToImmutable(),
            Offcuts = offcuts,
            FirstBoard = offcuts.Length,
            Patterns = patterns,
            Panels = panels.ToImmutable(),
            Runs = runs.ToImmutable(),
        };
        problem = ThinPairs.AddTo(problem, patternNeeds);
        problem = problem with { DoneSegments = DoneParts.Segments(problem) };
        return problem with { Pins = DoneParts.OpenPins(problem) };
    }

    /// <summary>What runs must share to be alike: their members' sizes and species wishes.</summary>
    private static string SizesOf(GrainRun run, ImmutableArray<Part> parts) =>
        string.Join(';', run.Members.Select(m => parts.First(p => p.Key == m.Part))
            .Select(p => $"{p.Length}|{p.Width}|{p.Thickness}|{string.Join(',', p.Species)}"));

    /// <summary>
    /// Every sensible number of layers and blanks: one glue-up for all copies, or two or three alike.
    /// A panel of a single blank is too short to work well when more than one is needed, and a layer nobody needs is not sawn.
    /// </summary>
    private static void AddModes(ImmutableArray<PanelCandidate>.Builder panels, int gift, Part part, int count, GiftMargins margins, Shop shop)
    {
        var modes = new SortedSet<(int Layers, int Blanks)>();
        var mostGlueUps = count <= 3 ? 1 : count <= 8 ? 2 : 3;
        for (var layers = 1; layers <= Math.Min(MostLayers, count); layers++)
        {
            for (var glueUps = 1; glueUps <= mostGlueUps; glueUps++)
            {
                var blanks = (count + (layers * glueUps) - 1) / (layers * glueUps);
                if ((blanks > 1 || count == 1) && layers * glueUps * blanks < count + blanks && (glueUps == 1 || part.Wish?.Panels != SetPanels.One))
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
            var needs = new PanelNeeds(part, blanks, layers, shop) { Margins = margins.OfPanel(part.Key, blanks * layers, layers) };
            var widest = WidestRough(needs, shop);
            if (widest < needs.RoughWidth(part.Wish?.MinimumStrips ?? 1) || !IsAllowed(needs, shop))
            {
                continue;
            }

            var slots = (count + (layers * blanks) - 1) / (layers * blanks);
            for (var slot = 0; slot < slots; slot++)
            {
                panels.Add(new PanelCandidate(panels.Count, gift, part, needs, slot, widest));
            }
        }
    }

    private static void AddShared(ImmutableArray<PanelCandidate>.Builder panels, ImmutableArray<PanelShare> shares, PanelNeeds needs, Shop shop)
    {
        var widest = WidestRough(needs, shop);
        if (widest >= needs.RoughWidth(needs.Part.Wish?.MinimumStrips ?? 1) && IsAllowed(needs, shop))
        {
            panels.Add(new PanelCandidate(panels.Count, shares[0].GiftIndex, needs.Part, needs, 0, widest) { Shares = shares });
        }
    }

    internal static Length WidestRough(PanelNeeds needs, Shop shop)
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
