using System.Collections.Immutable;
using Scrapwright.Core.Shops;

namespace Scrapwright.Client.Shops;

/// <summary>One allowance among the shop's settings.</summary>
/// <param name="Key">Name in the page.</param>
/// <param name="Title">Name on the screen.</param>
/// <param name="Hint">What it is counted on.</param>
/// <param name="Get">Reads it.</param>
/// <param name="Set">The allowances with it changed.</param>
public sealed record AllowanceSetting(string Key, string Title, string Hint, Func<Allowances, Allowance> Get, Func<Allowances, Allowance, Allowances> Set)
{
    /// <summary>All of them, in working order.</summary>
    public static ImmutableArray<AllowanceSetting> All { get; } =
    [
        new("face-joint", "Jointing a face", "thickness, one face, until it is clean", a => a.FaceJoint, (a, v) => a with { FaceJoint = v }),
        new("face-plane", "Planing the other face", "thickness, until it is parallel", a => a.FacePlane, (a, v) => a with { FacePlane = v }),
        new("edge-joint", "Jointing an edge", "width, each edge", a => a.EdgeJoint, (a, v) => a with { EdgeJoint = v }),
        new("panel-flatten", "Flattening a panel", "thickness, both faces together", a => a.PanelFlatten, (a, v) => a with { PanelFlatten = v }),
        new("resaw-clean-up", "Cleaning a sawn face", "thickness of one layer after resawing", a => a.ResawCleanUp, (a, v) => a with { ResawCleanUp = v }),
        new("sand", "Sanding", "thickness, each face", a => a.Sand, (a, v) => a with { Sand = v }),
        new("end-trim", "Squaring an end", "length, each end, kerf included", a => a.EndTrim, (a, v) => a with { EndTrim = v }),
        new("width-trim", "Trimming a panel to width", "width, both edges together, kerf included", a => a.WidthTrim, (a, v) => a with { WidthTrim = v }),
    ];
}
