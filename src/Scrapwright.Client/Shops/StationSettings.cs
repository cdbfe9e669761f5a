using System.Collections.Immutable;
using Scrapwright.Core.Shops;

namespace Scrapwright.Client.Shops;

/// <summary>The settings of one station, with how to put them back to the defaults.</summary>
/// <param name="Key">Name in the page.</param>
/// <param name="Title">Name on the screen.</param>
/// <param name="Hint">What they are for.</param>
/// <param name="Lengths">The sizes.</param>
/// <param name="Reset">The shop with these settings as they are by default.</param>
public sealed record StationSettings(string Key, string Title, string Hint, ImmutableArray<LengthSetting> Lengths, Func<Shop, Shop> Reset)
{
    private static readonly Shop Fresh = new();

    /// <summary>The stations with limits, in working order.</summary>
    public static ImmutableArray<StationSettings> All { get; } =
    [
        new(
            "jointer",
            "Jointer",
            "The machine's manual comes before these figures.",
            [
                new("jointer-width", "Widest face", "Wider pieces are ripped first.", s => s.Jointer.MaximumWidth, (s, v) => s with { Jointer = s.Jointer with { MaximumWidth = v } }),
                new("jointer-length", "Shortest piece", "Shorter pieces are kept off the machine.", s => s.Jointer.MinimumLength, (s, v) => s with { Jointer = s.Jointer with { MinimumLength = v } }),
                new("jointer-thickness", "Thinnest piece", "For jointing a face.", s => s.Jointer.MinimumThickness, (s, v) => s with { Jointer = s.Jointer with { MinimumThickness = v } }),
                new("jointer-narrow", "Narrowest piece", "Narrower ones are worked by hand.", s => s.Jointer.MinimumWidth, (s, v) => s with { Jointer = s.Jointer with { MinimumWidth = v } }),
            ],
            s => s with { Jointer = Fresh.Jointer }),
        new(
            "planer",
            "Planer",
            "The machine's manual comes before these figures.",
            [
                new("planer-width", "Widest piece", "Panels wider than this are flattened by hand.", s => s.Planer.MaximumWidth, (s, v) => s with { Planer = s.Planer with { MaximumWidth = v } }),
                new("planer-length", "Shortest piece", "A little more than the distance between the rollers.", s => s.Planer.MinimumLength, (s, v) => s with { Planer = s.Planer with { MinimumLength = v } }),
                new("planer-thin", "Thinnest result", "Without a carrier board under it.", s => s.Planer.MinimumThickness, (s, v) => s with { Planer = s.Planer with { MinimumThickness = v } }),
                new("planer-thick", "Thickest piece", "What goes under the cutter head.", s => s.Planer.MaximumThickness, (s, v) => s with { Planer = s.Planer with { MaximumThickness = v } }),
            ],
            s => s with { Planer = Fresh.Planer }),
        new(
            "table-saw",
            "Table saw",
            "Ripping along the fence, crosscutting on the sled.",
            [
                new("saw-kerf", "Kerf", "Width of the cut.", s => s.TableSaw.Kerf, (s, v) => s with { TableSaw = s.TableSaw with { Kerf = v } }),
                new("saw-length", "Shortest rip", "Shorter pieces go on a carrier sled.", s => s.TableSaw.MinimumRipLength, (s, v) => s with { TableSaw = s.TableSaw with { MinimumRipLength = v } }),
                new("saw-width", "Narrowest rip", "Between blade and fence.", s => s.TableSaw.MinimumRipWidth, (s, v) => s with { TableSaw = s.TableSaw with { MinimumRipWidth = v } }),
                new("saw-depth", "Deepest cut", "Blade upright.", s => s.TableSaw.MaximumDepth, (s, v) => s with { TableSaw = s.TableSaw with { MaximumDepth = v } }),
                new("saw-crosscut", "Longest crosscut", "Across the piece, on the sled.", s => s.TableSaw.MaximumCrosscut, (s, v) => s with { TableSaw = s.TableSaw with { MaximumCrosscut = v } }),
            ],
            s => s with { TableSaw = Fresh.TableSaw }),
        new(
            "bandsaw",
            "Bandsaw",
            "Resawing panels into layers, ripping rough stock.",
            [
                new("band-kerf", "Kerf", "Width of the cut.", s => s.Bandsaw.Kerf, (s, v) => s with { Bandsaw = s.Bandsaw with { Kerf = v } }),
                new("band-height", "Resaw height", "Widest panel that stands under the guide.", s => s.Bandsaw.ResawHeight, (s, v) => s with { Bandsaw = s.Bandsaw with { ResawHeight = v } }),
                new("band-length", "Shortest piece", "For resawing.", s => s.Bandsaw.MinimumLength, (s, v) => s with { Bandsaw = s.Bandsaw with { MinimumLength = v } }),
            ],
            s => s with { Bandsaw = Fresh.Bandsaw }),
        new(
            "drill-press",
            "Drill press",
            "",
            [
                new("drill-throat", "Throat", "From the column to the middle of the chuck.", s => s.DrillPress.Throat, (s, v) => s with { DrillPress = s.DrillPress with { Throat = v } }),
                new("drill-stroke", "Stroke", "Deepest hole in one go.", s => s.DrillPress.Stroke, (s, v) => s with { DrillPress = s.DrillPress with { Stroke = v } }),
            ],
            s => s with { DrillPress = Fresh.DrillPress }),
    ];

    /// <summary>What goes back to the pile, and the narrowest strip.</summary>
    public static StationSettings Keeping { get; } = new(
        "keeping",
        "What is worth keeping",
        "A leftover smaller than this in any direction goes to the scrap bin.",
        [
            new("keep-length", "Length", "At least this long.", s => s.KeepLength, (s, v) => s with { KeepLength = v }, MayBeZero: true),
            new("keep-width", "Width", "At least this wide.", s => s.KeepWidth, (s, v) => s with { KeepWidth = v }, MayBeZero: true),
            new("keep-thickness", "Thickness", "At least this thick.", s => s.KeepThickness, (s, v) => s with { KeepThickness = v }, MayBeZero: true),
        ],
        s => s with { KeepLength = Fresh.KeepLength, KeepWidth = Fresh.KeepWidth, KeepThickness = Fresh.KeepThickness });
}
