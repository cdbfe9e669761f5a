using System.Collections.Immutable;
using System.Globalization;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Wood;

namespace Scrapwright.Files;

/// <summary>Turns the rows of <c>pile.csv</c> into offcuts.</summary>
internal static class PileRows
{
    private const int MostPieces = 999;

    internal static ImmutableArray<Offcut> Read(Table table, LengthUnit bareUnit, ProblemList problems)
    {
        var offcuts = new List<(Offcut Offcut, int Line)>();
        var lines = new Dictionary<string, int>(StringComparer.OrdinalIgnoreCase);
        foreach (var row in table.Rows)
        {
            var cells = new Cells(row, table.HasDecimalCommas, bareUnit, problems);
            if (ReadRow(cells, row) is not { } offcut) continue;
            offcuts.Add((offcut, row.Line));
            if (offcut.Label.Length == 0) continue;
            var taken = PileLabels.Claimed(offcut).Select(label => lines.GetValueOrDefault(label)).FirstOrDefault(line => line > 0);
            if (taken > 0) cells.Refuse("label", FileMessages.UniqueLabel(taken));
            foreach (var label in PileLabels.Claimed(offcut)) lines.TryAdd(label, row.Line);
        }

        var labels = new LabelMaker(lines.Keys);
        foreach (var (offcut, line) in offcuts)
        {
            foreach (var doubt in OffcutDoubts.Of(offcut, bareUnit)) problems.Ask(line, doubt.Question);
        }

        return [.. offcuts.Select(entry => entry.Offcut.Label.Length > 0 ? entry.Offcut : entry.Offcut with { Label = labels.Next(entry.Offcut) })];
    }

    private static Offcut? ReadRow(Cells cells, TableRow row)
    {
        var label = row["label"];
        if (label.Length > 0 && !PileLabels.IsValid(label)) cells.Refuse("label", FileMessages.ALabel);
        var species = SpeciesTable.Find(row["species"]);
        if (species is null) cells.Refuse("species", FileMessages.ASpecies(NearestSpecies.To(row["species"]).Names));
        var length = cells.Size("length");
        var width = cells.Size("width");
        var thickness = cells.Size("thickness");
        var count = 1;
        if (row["count"].Length > 0 && !(int.TryParse(row["count"], NumberStyles.None, CultureInfo.InvariantCulture, out count) && count is >= 1 and <= MostPieces))
            cells.Refuse("count", FileMessages.ACount);
        var faces = PileWords.FindFaces(row["faces"]);
        if (faces is null) cells.Refuse("faces", FileMessages.FacesWord);
        var rings = PileWords.FindRings(row["grain"]);
        if (rings is null) cells.Refuse("grain", FileMessages.RingsWord);
        var (cup, bow, twist) = (cells.Warp("cup"), cells.Warp("bow"), cells.Warp("twist"));
        var defects = length is { } known && width is { } across ? cells.Defects(known, thickness is { } other ? Length.Max(across, other) : across) : [];
        if (cells.HasProblems || species is null || length is not { } l || width is not { } w || thickness is not { } t) return null;
        if (w < t)
        {
            cells.Ask($"{row["width"]} wide and {row["thickness"]} thick: taken the other way round, since the width is the wider of the two.");
            (w, t) = (t, w);
        }

        return new Offcut
        {
            Label = label,
            Species = species.Key,
            Length = l,
            Width = w,
            Thickness = t,
            Count = count,
            Faces = faces ?? Faces.Rough,
            Rings = rings ?? RingOrientation.Unknown,
            Cup = cup,
            Bow = bow,
            Twist = twist,
            Defects = defects,
            Note = row["note"],
        };
    }
}
