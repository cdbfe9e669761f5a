using Scrapwright.Core.Pile;
using Scrapwright.Core.Wood;

namespace Scrapwright.Files;

/// <summary>The words for faces and rings in <c>pile.csv</c>.</summary>
internal static class PileWords
{
    internal static string Of(Faces faces) => faces switch
    {
        Faces.OneSurfaced => "one face",
        Faces.BothSurfaced => "both faces",
        _ => "",
    };

    internal static string Of(RingOrientation rings) => rings switch
    {
        RingOrientation.Quarter => "quarter",
        RingOrientation.Rift => "rift",
        RingOrientation.Flat => "flat",
        _ => "",
    };

    internal static Faces? FindFaces(string word) => Letters(word) switch
    {
        "" or "rough" or "roughsawn" => Faces.Rough,
        "oneface" or "onesurfaced" or "oneside" or "one" or "s1s" => Faces.OneSurfaced,
        "bothfaces" or "bothsurfaced" or "bothsides" or "both" or "surfaced" or "planed" or "s2s" or "s4s" => Faces.BothSurfaced,
        _ => null,
    };

    internal static RingOrientation? FindRings(string word) => Letters(word) switch
    {
        "" or "unknown" => RingOrientation.Unknown,
        "quarter" or "quartersawn" or "quartered" => RingOrientation.Quarter,
        "rift" or "riftsawn" => RingOrientation.Rift,
        "flat" or "flatsawn" or "plain" or "plainsawn" => RingOrientation.Flat,
        _ => null,
    };

    private static string Letters(string word) => string.Concat(word.Where(char.IsLetterOrDigit).Select(char.ToLowerInvariant));
}
