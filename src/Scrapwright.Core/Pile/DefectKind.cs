namespace Scrapwright.Core.Pile;

/// <summary>What is wrong with a stretch of an offcut.</summary>
public enum DefectKind
{
    /// <summary>A knot.</summary>
    Knot,

    /// <summary>A check, split or shake.</summary>
    Check,

    /// <summary>Sapwood of another colour.</summary>
    Sapwood,

    /// <summary>A nail or screw hole, or the metal itself: find and remove the metal before any machine.</summary>
    NailHole,

    /// <summary>Rot, insect holes or stain.</summary>
    Decay,

    /// <summary>A missing corner, bark or wane.</summary>
    Wane,

    /// <summary>Anything else, told in the note.</summary>
    Other,
}
