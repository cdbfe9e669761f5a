using Scrapwright.Core.Measures;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Fits;

/// <summary>How one strip of a panel moves over a year. Changes are from the day the panel is made; below zero the strip shrinks. Rounded away from zero to a picometre.</summary>
public sealed record StripMovement
{
    /// <summary>Id of the strip on sheets; empty without a plan.</summary>
    public string Piece { get; init; } = "";

    /// <summary>Label of the single offcut it comes from; empty without a plan.</summary>
    public string Offcut { get; init; } = "";

    /// <summary>Key of the species.</summary>
    public required string Species { get; init; }

    /// <summary>How its growth rings stand; unknown counts as the larger movement.</summary>
    public required RingOrientation Rings { get; init; }

    /// <summary>Its width in the panel.</summary>
    public required Length Width { get; init; }

    /// <summary>Change of its width in the driest month.</summary>
    public required Length WidthInDriest { get; init; }

    /// <summary>Change of its width in the dampest month.</summary>
    public required Length WidthInDampest { get; init; }

    /// <summary>Change of its thickness in the driest month.</summary>
    public required Length ThicknessInDriest { get; init; }

    /// <summary>Change of its thickness in the dampest month.</summary>
    public required Length ThicknessInDampest { get; init; }

    /// <summary>How far it wants to cup in the worse of both months; null when the movement of its species is not known. An estimate, for a free strip: the panel holds it back.</summary>
    public CupTendency? Cup { get; init; }
}
