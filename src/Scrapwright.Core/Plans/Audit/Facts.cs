using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>What the checks look up: the request by label, and the plan by piece.</summary>
internal sealed class Facts
{
    private readonly Dictionary<string, int> lastUse = new(StringComparer.Ordinal);

    /// <summary>Reads plan and designs.</summary>
    public Facts(Plan plan, ImmutableArray<GiftDesign> designs, Findings findings)
    {
        Plan = plan;
        Designs = designs;
        Offcuts = [.. plan.Request.Pile.SelectMany(o => o.Pieces())];
        foreach (var offcut in Offcuts)
        {
            OffcutByLabel[offcut.Label] = offcut;
        }

        foreach (var board in plan.Faced)
        {
            var isNew = findings.Require(!FacedByLabel.ContainsKey(board.Label) && !OffcutByLabel.ContainsKey(board.Label), $"board {board.Label}", "named twice", "each label once");
            if (isNew && OffcutByLabel.TryGetValue(board.Upper, out var upper) && OffcutByLabel.TryGetValue(board.Lower, out var lower))
            {
                FacedByLabel[board.Label] = new FacedWood(board, upper, lower, Shop);
            }
        }

        foreach (var wood in FacedByLabel.Values)
        {
            OffcutByLabel[wood.Stated.Label] = wood.Board;
        }

        Wood = [.. Offcuts, .. FacedByLabel.Values.Select(w => w.Board)];

        foreach (var design in designs)
        {
            if (design.Outcome is DesignOutcome.Derived derived)
            {
                Products[design.Gift.Label] = derived.Product;
            }
        }

        foreach (var glueUp in plan.GlueUps)
        {
            findings.Require(GlueUpById.TryAdd(glueUp.Id, glueUp), $"glue-up {glueUp.Id}", "named twice", "each id once");
            foreach (var strip in glueUp.Strips)
            {
                findings.Require(GlueUpByStrip.TryAdd(strip.Piece, glueUp), $"glue-up {glueUp.Id}", $"strip {strip.Piece} twice", "each strip once");
            }
        }

        foreach (var board in plan.Boards)
        {
            findings.Require(BoardByPiece.TryAdd(board.Piece, board), $"board {board.Piece}", "named twice", "each board once");
        }

        foreach (var made in plan.Made)
        {
            foreach (var part in made.Parts)
            {
                findings.Require(
                    PartByPiece.TryAdd(part.Piece, (made.Gift, part)), $"gift {made.Gift}", $"piece {part.Piece} is two parts", "each piece one part");
            }
        }

        foreach (var rod in plan.Rods)
        {
            findings.Require(RodById.TryAdd(rod.Id, rod), $"rod {rod.Id}", "named twice", "each id once");
        }

        var index = 0;
        foreach (var work in plan.Steps.SelectMany(s => s.Works))
        {
            foreach (var id in work.In)
            {
                lastUse[id] = index;
            }

            index++;
        }
    }

    /// <summary>The plan.</summary>
    public Plan Plan { get; }

    /// <summary>The shop.</summary>
    public Shop Shop => Plan.Request.Shop;

    /// <summary>What came of each gift's design.</summary>
    public ImmutableArray<GiftDesign> Designs { get; }

    /// <summary>Single offcuts in the pile's order.</summary>
    public ImmutableArray<Offcut> Offcuts { get; }

    /// <summary>Single offcuts in the pile's order, then the boards glued face to face.</summary>
    public ImmutableArray<Offcut> Wood { get; }

    /// <summary>Boards glued face to face by label, worked out once more; without those whose offcuts are not in the pile.</summary>
    public Dictionary<string, FacedWood> FacedByLabel { get; } = new(StringComparer.Ordinal);

    /// <summary>Single offcuts and boards by label.</summary>
    public Dictionary<string, Offcut> OffcutByLabel { get; } = new(StringComparer.Ordinal);

    /// <summary>Products by gift; only of designs that could be derived.</summary>
    public Dictionary<string, Product> Products { get; } = new(StringComparer.Ordinal);

    /// <summary>Glue-ups by id.</summary>
    public Dictionary<string, GlueUp> GlueUpById { get; } = new(StringComparer.Ordinal);

    /// <summary>Glue-ups by the pieces glued.</summary>
    public Dictionary<string, GlueUp> GlueUpByStrip { get; } = new(StringComparer.Ordinal);

    /// <summary>Board runs by piece.</summary>
    public Dictionary<string, BoardRun> BoardByPiece { get; } = new(StringComparer.Ordinal);

    /// <summary>Parts of made gifts by piece.</summary>
    public Dictionary<string, (string Gift, MadePart Part)> PartByPiece { get; } = new(StringComparer.Ordinal);

    /// <summary>Rods by id.</summary>
    public Dictionary<string, RodUse> RodById { get; } = new(StringComparer.Ordinal);

    /// <summary>Whether a piece goes into a work after the one with the given index over all works, or is a part in the end.</summary>
    public bool IsUsedAfter(string piece, int workIndex) =>
        PartByPiece.ContainsKey(piece) || (lastUse.TryGetValue(piece, out var last) && last > workIndex);

    /// <summary>The part of a gift's product, or null.</summary>
    public Part? FindPart(string gift, string part) =>
        Products.TryGetValue(gift, out var product) ? product.Parts.FirstOrDefault(p => p.Key == part) : null;

    /// <summary>The run of a gift's product, or null.</summary>
    public GrainRun? FindRun(string gift, string mark) =>
        Products.TryGetValue(gift, out var product) ? product.Runs.FirstOrDefault(r => r.Mark == mark) : null;

    /// <summary>Colour difference between the woods of two offcuts; 0 when one is unknown.</summary>
    public double Contrast(string offcut, string other) =>
        ColourOf(offcut) is { } a && ColourOf(other) is { } b ? ColourDifference.Ciede2000(a, b) : 0;

    private LabColour? ColourOf(string offcut) =>
        OffcutByLabel.TryGetValue(offcut, out var found) ? SpeciesTable.FindKey(found.Species)?.Colour : null;
}
