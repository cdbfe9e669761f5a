using System.Globalization;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Client.Numbers;

/// <summary>Names of stations, operations and the like as a person says them.</summary>
public static class Words
{
    /// <summary>A station.</summary>
    public static string Of(Station station) => station switch
    {
        Station.TableSaw => "Table saw",
        Station.HandTools => "Hand tools",
        Station.DrillPress => "Drill press",
        Station.Clamps => "Clamps and glue",
        _ => station.ToString(),
    };

    /// <summary>An operation.</summary>
    public static string Of(Operation operation) => operation switch
    {
        Operation.FaceGlue => "Glue face to face",
        Operation.RoughCrosscut => "Crosscut to rough length",
        Operation.RoughRip => "Rip to rough width",
        Operation.FaceJoint => "Joint one face flat",
        Operation.FacePlane => "Plane the other face parallel",
        Operation.EdgeJoint => "Joint the edges",
        Operation.Rip => "Rip into strips",
        Operation.ResawStrips => "Resaw thick strips",
        Operation.CleanSawnFaces => "Plane sawn faces clean",
        Operation.CrosscutStrips => "Crosscut strips to length",
        Operation.PlaneToThickness => "Plane to one thickness",
        Operation.GlueUp => "Glue up",
        Operation.FlattenPanel => "Flatten the panel",
        Operation.Resaw => "Resaw into layers",
        Operation.PlanePanel => "Plane to thickness",
        Operation.TrimWidth => "Trim to width",
        Operation.CrosscutBlanks => "Crosscut to length",
        Operation.CutRods => "Cut rods",
        Operation.Drill => "Drill",
        Operation.CutLaps => "Cut half-laps",
        Operation.CutMitres => "Cut mitres",
        Operation.TreatEdges => "Treat the edges",
        Operation.DryFit => "Dry-fit",
        Operation.Sand => "Sand",
        Operation.Assemble => "Glue and assemble",
        Operation.Finish => "Finish",
        _ => operation.ToString(),
    };

    /// <summary>How a small piece is worked.</summary>
    public static string Of(Workaround workaround) => workaround switch
    {
        Workaround.HandTool => "by hand",
        Workaround.CarrierSled => "on a carrier sled",
        Workaround.Gang => "ganged with others",
        _ => "",
    };

    /// <summary>A defect.</summary>
    public static string Of(DefectKind kind) => kind switch
    {
        DefectKind.NailHole => "nail hole",
        _ => kind.ToString().ToLowerInvariant(),
    };

    /// <summary>State of the faces.</summary>
    public static string Of(Faces faces) => faces switch
    {
        Faces.Rough => "rough",
        Faces.OneSurfaced => "one face surfaced",
        _ => "both faces surfaced",
    };

    /// <summary>Growth rings; empty when nobody has looked.</summary>
    public static string Of(RingOrientation rings) => rings switch
    {
        RingOrientation.Unknown => "",
        _ => rings.ToString().ToLowerInvariant() + "-sawn",
    };

    /// <summary>Which part of the dust.</summary>
    public static string Of(DustFraction fraction) => fraction.ToString().ToLowerInvariant();

    /// <summary>Minutes as hours and minutes: 1 h 20 min.</summary>
    public static string Minutes(int minutes) => minutes switch
    {
        < 60 => $"{minutes} min",
        _ when minutes % 60 == 0 => $"{minutes / 60} h",
        _ => $"{minutes / 60} h {minutes % 60} min",
    };

    /// <summary>Reads a number of per cent, with the sign or without; null when it is none. [%]</summary>
    public static double? Percent(string text) =>
        double.TryParse(text.Trim().TrimEnd('%').TrimEnd().Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number : null;

    /// <summary>A number of things: 1 gift, 2 gifts.</summary>
    public static string Count(int count, string one, string many) => count == 1 ? $"1 {one}" : $"{count} {many}";
}
