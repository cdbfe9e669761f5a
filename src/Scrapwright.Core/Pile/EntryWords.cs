using System.Collections.Frozen;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Pile;

/// <summary>The words of an entry line beside species and units. Case does not matter.</summary>
internal static class EntryWords
{
    private static readonly FrozenDictionary<string, (EntryWordKind Kind, int Value)>.AlternateLookup<ReadOnlySpan<char>> Lookup =
        All().ToFrozenDictionary(word => word.Text, word => (word.Kind, word.Value), StringComparer.OrdinalIgnoreCase).GetAlternateLookup<ReadOnlySpan<char>>();

    /// <summary>What a word is for, if it is known.</summary>
    internal static bool TryFind(ReadOnlySpan<char> word, out EntryWordKind kind, out int value)
    {
        bool found = Lookup.TryGetValue(word, out var entry);
        (kind, value) = entry;
        return found;
    }

    /// <summary>Whether a word is one of a few.</summary>
    internal static bool IsOneOf(ReadOnlySpan<char> word, params ReadOnlySpan<string> words)
    {
        foreach (string candidate in words)
        {
            if (word.Equals(candidate, StringComparison.OrdinalIgnoreCase)) return true;
        }

        return false;
    }

    /// <summary>Word behind a number that makes it a count.</summary>
    internal static bool IsPieces(ReadOnlySpan<char> word) =>
        IsOneOf(word, "pcs", "pc", "pieces", "piece", "off", "of", "ea", "each", "boards", "offcuts", "strips", "sticks", "alike", "times");

    /// <summary>The size that a word behind a number names, or null.</summary>
    internal static EntryPart? NamedSize(ReadOnlySpan<char> word) =>
        IsOneOf(word, "long", "l", "length") ? EntryPart.Length
        : IsOneOf(word, "wide", "w", "width") ? EntryPart.Width
        : IsOneOf(word, "thick", "t", "thickness") ? EntryPart.Thickness
        : null;

    internal static bool IsFaceNoun(ReadOnlySpan<char> word) => IsOneOf(word, "face", "faces", "side", "sides");

    internal static bool IsSawn(ReadOnlySpan<char> word) => IsOneOf(word, "sawn", "sawed", "cut", "grain", "grained");

    private static IEnumerable<(string Text, EntryWordKind Kind, int Value)> All() =>
    [
        .. Of(EntryWordKind.Filler, 0, "a an the of with and about approx piece pieces pcs board boards offcut offcuts strip strips stick sticks scrap scraps bit bits length lengths is are slight slightly small big large short long narrow only"),
        .. Of(EntryWordKind.Remark, 0, "curly figured quilted birdseye spalted wormy burl crotch old dark light heart heartwood ambrosia tiger fiddleback straight nice thin clear reclaimed kiln-dried air-dried"),
        .. Of(EntryWordKind.Number, 3, "three"), .. Of(EntryWordKind.Number, 4, "four"), .. Of(EntryWordKind.Number, 5, "five"),
        .. Of(EntryWordKind.Number, 6, "six"), .. Of(EntryWordKind.Number, 7, "seven"), .. Of(EntryWordKind.Number, 8, "eight"),
        .. Of(EntryWordKind.Number, 9, "nine"), .. Of(EntryWordKind.Number, 10, "ten"), .. Of(EntryWordKind.Number, 11, "eleven"),
        .. Of(EntryWordKind.Number, 12, "twelve dozen"), .. Of(EntryWordKind.Number, 2, "pair"),
        .. Of(EntryWordKind.HowManyFaces, 1, "one single"), .. Of(EntryWordKind.HowManyFaces, 2, "two both"),
        .. Of(EntryWordKind.CountAhead, 0, "qty quantity count"),
        .. Of(EntryWordKind.Faces, (int)Faces.Rough, "rough unplaned roughsawn rough-sawn"),
        .. Of(EntryWordKind.Faces, (int)Faces.OneSurfaced, "s1s"),
        .. Of(EntryWordKind.Faces, (int)Faces.BothSurfaced, "s2s s3s s4s surfaced planed dressed smooth"),
        .. Of(EntryWordKind.Rings, (int)RingOrientation.Quarter, "quarter quartered quartersawn quarter-sawn qs qtr"),
        .. Of(EntryWordKind.Rings, (int)RingOrientation.Rift, "rift riftsawn rift-sawn"),
        .. Of(EntryWordKind.Rings, (int)RingOrientation.Flat, "plain plainsawn plain-sawn flatsawn flat-sawn"),
        .. Of(EntryWordKind.Flat, 0, "flat"),
        .. Of(EntryWordKind.Warp, (int)EntryPart.Cup, "cup cupped cupping"),
        .. Of(EntryWordKind.Warp, (int)EntryPart.Bow, "bow bowed"),
        .. Of(EntryWordKind.Warp, (int)EntryPart.Twist, "twist twisted wind winding"),
        .. Of(EntryWordKind.Defect, (int)DefectKind.Knot, "knot knots knotty"),
        .. Of(EntryWordKind.Defect, (int)DefectKind.Check, "check checks checked checking split splits shake shakes crack cracks cracked"),
        .. Of(EntryWordKind.Defect, (int)DefectKind.Sapwood, "sapwood sap"),
        .. Of(EntryWordKind.Defect, (int)DefectKind.NailHole, "nail nails screw screws nailhole nailholes nail-hole nail-holes hole holes"),
        .. Of(EntryWordKind.Defect, (int)DefectKind.Decay, "decay decayed rot rotten worm worms wormhole wormholes stain stains stained"),
        .. Of(EntryWordKind.Defect, (int)DefectKind.Wane, "wane waney bark"),
        .. Of(EntryWordKind.Defect, (int)DefectKind.Other, "defect defects other flaw flaws gouge dent"),
        .. Of(EntryWordKind.No, 0, "no not without"),
        .. Of(EntryWordKind.Note, 0, "note notes"),
    ];

    private static IEnumerable<(string, EntryWordKind, int)> Of(EntryWordKind kind, int value, string words) =>
        words.Split(' ').Select(word => (word, kind, value));
}
