using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Shops;

namespace Scrapwright.Planning.Problems;

/// <summary>One way to mill and rip a single offcut.</summary>
/// <param name="Offcut">The single offcut.</param>
/// <param name="OffcutIndex">Its place in the problem.</param>
/// <param name="Route">Order of work.</param>
/// <param name="Lanes">Strips across its width, lower edge first; of a strip that is sawn into layers each layer is one.</param>
/// <param name="Runs">Its clear stretches.</param>
internal sealed record OffcutPattern(Offcut Offcut, int OffcutIndex, Route Route, ImmutableArray<PatternLane> Lanes, ImmutableArray<ClearRun> Runs)
{
    /// <summary>Into how many layers each ripped strip is sawn before it is glued; 1 for none. The layers of one strip are lanes that follow each other.</summary>
    internal int Layers { get; init; } = 1;

    /// <summary>What it is glued from, when it is a board glued face to face first; null for an offcut of the pile.</summary>
    internal Facing? Facing { get; init; }

    /// <summary>Places of all offcuts that it takes for itself: of a board its own and those of its two offcuts.</summary>
    internal ImmutableArray<int> Takes => Facing is { } facing ? [OffcutIndex, facing.Upper, facing.Lower] : [OffcutIndex];

    /// <summary>Thickness that it uses up in the pile.</summary>
    internal Length RoughThickness => Facing?.RoughThickness ?? Offcut.Thickness;

    /// <summary>How many strips it is ripped into.</summary>
    internal int Rips => Lanes.Length / Layers;

    /// <summary>
    /// How many edges were jointed, each with its own spread, since a saw set the width of a lane. Ripped after milling, the first has an edge that the fence runs on,
    /// and the last has what that edge was over or under as well.
    /// </summary>
    internal int EdgesJointed(int lane) =>
        Route != Route.MillWhole || Rips == 1 ? 2 : lane / Layers == 0 ? 1 : lane / Layers == Rips - 1 ? 3 : 2;

    /// <summary>True when a lane is cut into pieces already.</summary>
    internal bool IsCut(int lane) => Runs.Any(r => r.Lane == lane && r.Piece is not null);

    /// <summary>The runs of a lane, with their places.</summary>
    internal IEnumerable<(int Index, ClearRun Run)> RunsOf(int lane) => Runs.Index().Where(r => r.Item.Lane < 0 || r.Item.Lane == lane);

    /// <summary>
    /// The same stretch of the sister of a lane: the layer beside it in the same stick. Layers go in pairs, the first with the second; a third is alone. Null when there is none.
    /// </summary>
    internal (int Lane, int Run)? FindSister(int lane, int run)
    {
        var layer = lane % Layers;
        if (layer % 2 == 0 && layer + 1 == Layers)
        {
            return null;
        }

        var sister = layer % 2 == 0 ? lane + 1 : lane - 1;
        foreach (var (index, stretch) in RunsOf(sister))
        {
            if (stretch.From == Runs[run].From)
            {
                return (sister, index);
            }
        }

        return null;
    }

    /// <summary>Thickness ladder of a strip of the lane that is used over the given length.</summary>
    internal Ladder Thickness(int lane, Length needed, Shop shop) => Route switch
    {
        Route.MillWhole => Thickness(Offcut.Length, Offcut.Width, shop),
        Route.RipFirst => Thickness(Offcut.Length, Lanes[lane].RoughWidth, shop),
        _ => Thickness(Length.Min(Offcut.Length, needed + shop.TableSaw.Kerf), Offcut.Width, shop),
    };

    /// <summary>Thickness ladder of a strip whose faces are worked at the given size.</summary>
    internal Ladder Thickness(Length length, Length width, Shop shop) => StripMilling.Thickness(Offcut, length, width, Layers, shop, Facing?.Spread ?? Length.Zero);
}
