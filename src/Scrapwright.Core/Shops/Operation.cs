namespace Scrapwright.Core.Shops;

/// <summary>What is done to a piece in a step.</summary>
public enum Operation
{
    /// <summary>Glue two thin pieces face to face into one thick board, before anything else is done to it.</summary>
    FaceGlue,

    /// <summary>Cut across the grain, before milling, to lengths that are then milled one by one.</summary>
    RoughCrosscut,

    /// <summary>Cut along the grain, before milling.</summary>
    RoughRip,

    /// <summary>Flatten one wide face.</summary>
    FaceJoint,

    /// <summary>Plane the other face parallel.</summary>
    FacePlane,

    /// <summary>Straighten edges square to the face.</summary>
    EdgeJoint,

    /// <summary>Cut along the grain into milled strips.</summary>
    Rip,

    /// <summary>Saw a thick milled strip into thinner ones before it is glued.</summary>
    ResawStrips,

    /// <summary>Plane the sawn faces of resawn strips clean.</summary>
    CleanSawnFaces,

    /// <summary>Cut milled strips to the length their glue-up or part needs.</summary>
    CrosscutStrips,

    /// <summary>Plane the strips of one glue-up, or a solid part, to one thickness.</summary>
    PlaneToThickness,

    /// <summary>Glue strips edge to edge.</summary>
    GlueUp,

    /// <summary>Flatten a glued panel on both faces.</summary>
    FlattenPanel,

    /// <summary>Saw a panel into layers.</summary>
    Resaw,

    /// <summary>Plane panel or layer to the thickness before sanding.</summary>
    PlanePanel,

    /// <summary>Trim a panel's two outer edges to width.</summary>
    TrimWidth,

    /// <summary>Square the end and crosscut blanks from a panel, or parts from a solid strip.</summary>
    CrosscutBlanks,

    /// <summary>Cut rods to length.</summary>
    CutRods,

    /// <summary>Drill holes.</summary>
    Drill,

    /// <summary>Cut half-laps.</summary>
    CutLaps,

    /// <summary>Cut mitres on the ends of grain-matched parts.</summary>
    CutMitres,

    /// <summary>Ease, chamfer or round edges.</summary>
    TreatEdges,

    /// <summary>Assemble dry and check the fit on what it will hold.</summary>
    DryFit,

    /// <summary>Sand faces to the last grit.</summary>
    Sand,

    /// <summary>Glue and assemble a stand.</summary>
    Assemble,

    /// <summary>Apply finish.</summary>
    Finish,
}
