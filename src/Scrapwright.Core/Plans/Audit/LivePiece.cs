using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>A piece while the plan is replayed, with what was already done to it.</summary>
internal sealed class LivePiece(Piece piece, int born)
{
    /// <summary>Its sizes now.</summary>
    public Piece Piece { get; set; } = piece;

    /// <summary>When its id first came up.</summary>
    public int Born { get; } = born;

    /// <summary>Where it begins along its offcut, from the marked end; says nothing once it is glued.</summary>
    public Length From { get; set; }

    /// <summary>Least distance of its lower edge from its offcut's near edge; says nothing once it is glued.</summary>
    public Length AcrossFrom { get; set; }

    /// <summary>Greatest distance of its upper edge from its offcut's near edge: what was taken off edges may have come off either.</summary>
    public Length AcrossTo { get; set; } = piece.Width;

    /// <summary>Whether it came out of a crosscut before it was glued.</summary>
    public bool IsCrosscut { get; set; }

    /// <summary>Whether one face was jointed.</summary>
    public bool FaceJointed { get; set; }

    /// <summary>Whether the other face was planed parallel.</summary>
    public bool FacePlaned { get; set; }

    /// <summary>Whether its lower edge was jointed.</summary>
    public bool LowerEdge { get; set; }

    /// <summary>Whether its upper edge was jointed.</summary>
    public bool UpperEdge { get; set; }

    /// <summary>Thickness before it was planed alike with others; null when it was not.</summary>
    public Length? BeforePlaning { get; set; }

    /// <summary>Width before it was trimmed; null when it was not.</summary>
    public Length? BeforeTrim { get; set; }

    /// <summary>Works that its width depends on, by number, with one standard deviation of each. [mm]</summary>
    public ImmutableArray<(int Work, double SpreadMm)> EdgeWorks { get; set; } = [];

    /// <summary>Works that its thickness before planing depends on, by number, with one standard deviation of each. [mm]</summary>
    public ImmutableArray<(int Work, double SpreadMm)> FaceWorks { get; set; } = [];

    /// <summary>The glue-up it comes from.</summary>
    public GlueUp? Panel { get; set; }

    /// <summary>Into how many layers it was sawn before it was glued; 1 for none.</summary>
    public int Layers { get; set; } = 1;

    /// <summary>Number of the work that sawed it into layers before it was glued: the same for all layers of one stick; null when it was not.</summary>
    public int? Stick { get; set; }

    /// <summary>Which layer of its stick it is, counted through the stick from 0.</summary>
    public int Layer { get; set; }

    /// <summary>Whether the faces sawn when it was resawn were planed clean.</summary>
    public bool Cleaned { get; set; }

    /// <summary>Whether its panel was flattened.</summary>
    public bool Flattened { get; set; }

    /// <summary>Whether it is a layer sawn from its panel.</summary>
    public bool Resawn { get; set; }

    /// <summary>Whether it was planed as a panel.</summary>
    public bool Planed { get; set; }

    /// <summary>The board run it comes from.</summary>
    public BoardRun? Board { get; set; }

    /// <summary>Whether it was cut to the length of a blank or part.</summary>
    public bool Blanked { get; set; }

    /// <summary>The rod it comes from.</summary>
    public RodUse? Rod { get; set; }

    /// <summary>Whether another piece is the layer that lay beside it in one stick and begins at the same place along it.</summary>
    public bool IsSisterOf(LivePiece other) => Stick is { } stick && stick == other.Stick && Math.Abs(Layer - other.Layer) == 1 && From == other.From;

    /// <summary>A piece cut from this one, with the same history.</summary>
    public LivePiece Child(Piece piece, int born) => new(piece, born)
    {
        From = From,
        AcrossFrom = AcrossFrom,
        AcrossTo = AcrossTo,
        IsCrosscut = IsCrosscut,
        FaceJointed = FaceJointed,
        FacePlaned = FacePlaned,
        LowerEdge = LowerEdge,
        UpperEdge = UpperEdge,
        BeforePlaning = BeforePlaning,
        BeforeTrim = BeforeTrim,
        EdgeWorks = EdgeWorks,
        FaceWorks = FaceWorks,
        Layers = Layers,
        Stick = Stick,
        Layer = Layer,
        Cleaned = Cleaned,
        Panel = Panel,
        Flattened = Flattened,
        Resawn = Resawn,
        Planed = Planed,
        Board = Board,
        Blanked = Blanked,
        Rod = Rod,
    };
}
