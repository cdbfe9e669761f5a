using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Sheets;

/// <summary>What to mind at each station. Common practice, no source; the machine's manual and local rules come first.</summary>
internal static class StationCautions
{
    internal const string First = "The machine's manual and local rules come first.";

    internal static IEnumerable<string> For(Station station, Shop shop, Sizes sizes) => station switch
    {
        Station.TableSaw =>
        [
            "Kickback: riving knife in, stand beside the line of cut, push stick for narrow strips.",
            $"Never fence and mitre gauge together. Nothing shorter than {sizes.About(shop.TableSaw.MinimumRipLength)} along the fence.",
        ],
        Station.Jointer =>
        [
            $"Nothing shorter than {sizes.About(shop.Jointer.MinimumLength)} or narrower than {sizes.About(shop.Jointer.MinimumWidth)}: hand plane it.",
            "Push blocks; hands never over the cutters. Shallow passes, with the grain.",
        ],
        Station.Planer =>
        [
            $"Nothing shorter than {sizes.About(shop.Planer.MinimumLength)} without a sled or longer rails. Stand aside, never look in.",
            "Shallow passes. Check with the calliper well before the number.",
        ],
        Station.Bandsaw =>
        [
            "Guides just above the wood. Feed slowly, fingers beside the line, push stick for the end.",
            $"Panels on edge need a tall fence. Nothing shorter than {sizes.About(shop.Bandsaw.MinimumLength)} without a sled.",
        ],
        Station.HandTools => ["Clamp the wood, both hands behind the edge."],
        Station.Clamps => ["Dry run first: every joint closed with light pressure. Cauls flat, clamps above and below in turn."],
        Station.DrillPress => ["Clamp the work, waste board below. No gloves, hair and sleeves tied back."],
        Station.Router => ["Against the turn of the bit, small bites. Small parts in a holder, never in the hand."],
        Station.Bench => ["Dry fit before glue. Check diagonals."],
        Station.Sanding => ["Dust: mask and extraction, also by hand. Vacuum between grits."],
        Station.Finishing =>
        ["Fresh air, gloves."],
        _ => [],
    };

    /// <summary>True where wood turns to dust or chips, so that the cautions of the species count.</summary>
    internal static bool MakesDust(Station station) => station is not (Station.Clamps or Station.Bench or Station.Finishing);
}
