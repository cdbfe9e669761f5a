using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans.Choices;

/// <summary>
/// What of the work that is done still fits the workshop as it is. What does not fit (another size was entered, the gift is gone or its parts have other sizes) is
/// left out of the plan, and its wood is left alone: it was used up.
/// </summary>
public sealed class DoneWork
{
    private readonly Dictionary<string, Offcut> offcuts;
    private readonly Dictionary<string, Length> spreads = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Product> products = new(StringComparer.Ordinal);
    private readonly Dictionary<string, MilledOffcut> milled = new(StringComparer.Ordinal);
    private readonly HashSet<string> usedUp;
    private readonly Shop shop;

    private DoneWork(PlanRequest request, ImmutableArray<GiftDesign> designs)
    {
        shop = request.Shop;
        offcuts = request.Pile.SelectMany(o => o.Pieces()).GroupBy(o => o.Label, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.First(), StringComparer.Ordinal);
        AddFaced(request);
        foreach (var design in designs)
            if (design.Outcome is DesignOutcome.Derived derived) products.TryAdd(design.Gift.Label, derived.Product);
        foreach (var one in request.Choices.Milled) milled.TryAdd(one.Offcut, one);

        usedUp = request.Choices.Glued.SelectMany(g => g.Strips).Select(s => s.Piece).Concat(request.Choices.Cut.Select(b => b.Piece)).ToHashSet(StringComparer.Ordinal);
        var faults = ImmutableArray.CreateBuilder<ChoiceFault>();
        var used = new HashSet<string>(StringComparer.Ordinal);
        var ids = new HashSet<string>(StringComparer.Ordinal);
        Glued = [.. request.Choices.Glued.Where((g, i) => Holds($"glued[{i}]", g.Id, ids.Add(g.Id) ? FaultOf(g) : "there twice", g.Strips.Select(s => s.Piece)))];
        Cut = [.. request.Choices.Cut.Where((b, i) => Holds($"cut[{i}]", b.Piece, FaultOf(b), [b.Piece]))];
        MilledStrips = [.. request.Choices.MilledStrips.Where((m, i) => Fits($"milledStrips[{i}]", m.Strip.Piece, FaultOf(m)))];
        Faults = faults.ToImmutable();
        var kept = Glued.SelectMany(g => g.Strips.Select(s => s.Offcut)).Concat(Cut.Select(b => b.Offcut)).Concat(MilledStrips.Select(m => m.Strip.Offcut)).ToImmutableHashSet(StringComparer.Ordinal);
        Milled = [.. request.Choices.Milled.Where(m => kept.Contains(m.Offcut)).DistinctBy(m => m.Offcut)];
        LeftAlone = [.. request.Choices.Glued.SelectMany(g => g.Strips.Select(s => s.Offcut)).Concat(request.Choices.Cut.Select(b => b.Offcut))
            .Concat(request.Choices.MilledStrips.Select(m => m.Strip.Offcut)).Where(o => !kept.Contains(o)).SelectMany(o => o.Split(FaceGluing.Sign).Append(o))];

        bool Holds(string path, string what, string fault, IEnumerable<string> pieces)
        {
            if (fault.Length == 0 && !pieces.All(used.Add)) fault = "a strip of it is in something else that is done";
            return Fits(path, what, fault);
        }

        bool Fits(string path, string what, string fault)
        {
            if (fault.Length > 0) faults.Add(new(path, $"{what}: {fault}", "work that is done as it was planned; mark it as not done if it is not"));
            return fault.Length == 0;
        }
    }

    /// <summary>Glue-ups that fit.</summary>
    public ImmutableArray<DoneGlueUp> Glued { get; }

    /// <summary>Boards that fit.</summary>
    public ImmutableArray<BoardRun> Cut { get; }

    /// <summary>Strips that are milled and fit; among them such as are in a glue-up that is glued.</summary>
    public ImmutableArray<MilledStrip> MilledStrips { get; }

    /// <summary>The offcuts of what fits, and how they were milled.</summary>
    public ImmutableArray<MilledOffcut> Milled { get; }

    /// <summary>Boards glued face to face of which something is done that fits, in the order of their labels.</summary>
    public ImmutableArray<string> Faced => [.. Milled.Select(m => m.Offcut).Where(o => o.Contains(FaceGluing.Sign, StringComparison.Ordinal)).Order(StringComparer.Ordinal)];

    /// <summary>Offcuts of work that does not fit: not to be used.</summary>
    public ImmutableHashSet<string> LeftAlone { get; }

    /// <summary>What does not fit, and why.</summary>
    public ImmutableArray<ChoiceFault> Faults { get; }

    /// <summary>The work that is done of a request.</summary>
    public static DoneWork Of(PlanRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return new(request, request.Choices.Glued.IsEmpty && request.Choices.Cut.IsEmpty && request.Choices.MilledStrips.IsEmpty ? [] : request.DeriveDesigns());
    }

    /// <summary>The same when what came of the designs is known already.</summary>
    public static DoneWork Of(PlanRequest request, ImmutableArray<GiftDesign> designs)
    {
        ArgumentNullException.ThrowIfNull(request);
        return new(request, designs);
    }

    /// <summary>How many copies of a panel part are still to be made, those of glue-ups that are glued taken off; 0 when none.</summary>
    public int StillNeeded(string gift, Part part)
    {
        ArgumentNullException.ThrowIfNull(part);
        return Math.Max(0, part.Count - Glued.Sum(g => g.PiecesFor(gift, part.Key)));
    }

    /// <summary>True when a piece is in something that is done, whether it fits or not.</summary>
    public bool IsUsedUp(string piece) => usedUp.Contains(piece);

    /// <summary>True when the board of a run is cut.</summary>
    public bool IsCut(string gift, string run) => Cut.Any(b => b.Gift == gift && b.Run == run);

    /// <summary>Boards glued face to face that something done comes from are wood like the offcuts of the pile; one offcut is in one of them.</summary>
    private void AddFaced(PlanRequest request)
    {
        var used = new HashSet<string>(StringComparer.Ordinal);
        foreach (var label in request.Choices.Milled.Select(m => m.Offcut).Where(o => !offcuts.ContainsKey(o)))
        {
            if (FaceGluing.Find(label, offcuts, request.Shop) is { IsAllowed: true } gluing
                && !request.Choices.Milled.Any(m => m.Offcut == gluing.Upper.Label || m.Offcut == gluing.Lower.Label)
                && used.Add(gluing.Upper.Label) & used.Add(gluing.Lower.Label))
            {
                offcuts[label] = gluing.Board;
                spreads[label] = gluing.Spread;
            }
        }
    }

    private string FaultOf(DoneGlueUp done)
    {
        if (!products.TryGetValue(done.Gift, out var product)) return $"there is no gift {done.Gift} to make";
        if (product.Parts.FirstOrDefault(p => p.Key == done.Part && p.Kind == PartKind.Panel) is not { } part) return $"{done.Gift} has no panel part {done.Part}";
        if (done.Strips.IsEmpty || done.Blanks is < 1 or > 1000 || done.Layers is < 1 or > 100) return "no strips or blanks";
        if (done.Also.Any(a => a.Pieces < 1) || done.Also.Sum(a => (long)a.Pieces) >= done.Blanks * done.Layers) return "more pieces for others than it gives";
        foreach (var strip in done.Strips)
            if (FaultOf(strip.Piece, strip.Offcut, strip.RoughWidth, strip.Width, strip.Length, strip.Thickness, strip.Layers) is { Length: > 0 } fault) return fault;

        var needs = new PanelNeeds(part, done.Blanks, done.Layers, shop);
        var thinnest = done.Strips.Min(s => s.Thickness);
        var spread = done.Strips.Where(s => s.Thickness == thinnest).Max(s => Spread(offcuts[s.Offcut], s.Layers));
        var fits = done.Strips.Min(s => s.Length) >= needs.Overlap && Length.Sum(done.Strips.Select(s => s.Width)) >= needs.RoughWidth(done.Strips.Length)
            && thinnest >= needs.StripThickness(spread) && PanelOrder.Keeps([.. done.Strips.Select(s => offcuts[s.Offcut].Species)], part.Wish, shop, Sisters.AreInTheMiddle(done.Strips));
        return fits ? "" : $"{part.Title} of {done.Gift} needs another size or order now";
    }

    private string FaultOf(MilledStrip done)
    {
        if (!products.TryGetValue(done.Gift, out var product)) return $"there is no gift {done.Gift} to make";
        if (product.Parts.All(p => p.Key != done.Part || p.Kind != PartKind.Panel)) return $"{done.Gift} has no panel part {done.Part}";
        var strip = done.Strip;
        return FaultOf(strip.Piece, strip.Offcut, strip.RoughWidth, strip.Width, strip.Length, strip.Thickness, strip.Layers);
    }

    private string FaultOf(BoardRun done)
    {
        if (!products.TryGetValue(done.Gift, out var product)) return $"there is no gift {done.Gift} to make";
        if (product.Runs.FirstOrDefault(r => r.Mark == done.Run) is not { Members.IsEmpty: false } run) return $"{done.Gift} has no run {done.Run}";
        if (FaultOf(done.Piece, done.Offcut, done.RoughWidth, done.Width, done.Length, done.Thickness, done.Layers) is { Length: > 0 } fault) return fault;
        var needs = new SolidNeeds(run, product.Parts, shop);
        return done.Length >= needs.Length && done.RoughWidth >= needs.RoughWidth && done.Thickness >= needs.StripThickness(Spread(offcuts[done.Offcut], done.Layers))
            ? "" : $"run {done.Run} of {done.Gift} needs another size now";
    }

    private string FaultOf(string piece, string label, Length roughWidth, Length width, Length length, Length thickness, int layers)
    {
        if (!offcuts.TryGetValue(label, out var offcut)) return $"{label} is not in the pile";
        if (!milled.TryGetValue(label, out var way) || !way.Fits(offcut, shop)) return $"{label} has another size now, or the saw another kerf";
        if (way.Lanes.FirstOrDefault(l => l.Pieces.Any(p => p.Piece == piece && p.Length == length)) is not { } lane || lane.RoughWidth != roughWidth || way.Layers != layers)
            return $"{label} was not cut into {piece}";
        var ladder = way.Way switch
        {
            MilledWay.Whole => StripMilling.Thickness(offcut, offcut.Length, offcut.Width, layers, shop),
            MilledWay.RippedFirst => StripMilling.Thickness(offcut, offcut.Length, roughWidth, layers, shop),
            _ => StripMilling.Thickness(offcut, length, offcut.Width, layers, shop),
        };
        // What does not divide stays in the last layer.
        return thickness >= ladder.End && thickness.Picometres - ladder.End.Picometres < layers && StripMilling.Width(roughWidth, shop).End == width ? "" : $"{label} has another size now, or the shop other allowances";
    }

    private Length Spread(Offcut offcut, int layers) =>
        StripMilling.Thickness(offcut, offcut.Length, offcut.Width, layers, shop, spreads.GetValueOrDefault(offcut.Label)).Spread;
}
