namespace Scrapwright.Core.Shops;

/// <summary>The words for what a shop has and does.</summary>
public static class ShopWords
{
    /// <summary>Name of a station.</summary>
    public static string Of(Station station) => station switch
    {
        Station.TableSaw => "Table saw",
        Station.Jointer => "Jointer",
        Station.Planer => "Planer",
        Station.Bandsaw => "Bandsaw",
        Station.HandTools => "Hand tools",
        Station.Clamps => "Clamps",
        Station.DrillPress => "Drill press",
        Station.Router => "Router",
        Station.Bench => "Bench",
        Station.Sanding => "Sanding",
        Station.Finishing => "Finishing",
        _ => throw new ArgumentOutOfRangeException(nameof(station), station, "Unknown station."),
    };

    /// <summary>What an operation asks the maker to do.</summary>
    public static string Of(Operation operation) => operation switch
    {
        Operation.FaceGlue => "Glue face to face",
        Operation.RoughCrosscut => "Crosscut rough stock",
        Operation.RoughRip => "Rip rough stock",
        Operation.FaceJoint => "Joint one face",
        Operation.FacePlane => "Plane the other face",
        Operation.EdgeJoint => "Joint edges",
        Operation.Rip => "Rip strips",
        Operation.ResawStrips => "Resaw thick strips",
        Operation.CleanSawnFaces => "Plane sawn faces clean",
        Operation.CrosscutStrips => "Crosscut strips",
        Operation.PlaneToThickness => "Plane strips alike",
        Operation.GlueUp => "Glue up",
        Operation.FlattenPanel => "Flatten panels",
        Operation.Resaw => "Resaw into layers",
        Operation.PlanePanel => "Plane to thickness",
        Operation.TrimWidth => "Trim to width",
        Operation.CrosscutBlanks => "Crosscut blanks",
        Operation.CutRods => "Cut rods",
        Operation.Drill => "Drill",
        Operation.CutLaps => "Cut half-laps",
        Operation.CutMitres => "Cut mitres",
        Operation.TreatEdges => "Treat edges",
        Operation.DryFit => "Dry fit",
        Operation.Sand => "Sand",
        Operation.Assemble => "Assemble",
        Operation.Finish => "Apply finish",
        _ => throw new ArgumentOutOfRangeException(nameof(operation), operation, "Unknown operation."),
    };
}
