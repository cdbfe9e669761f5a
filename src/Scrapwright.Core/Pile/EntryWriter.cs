using System.Text;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Pile;

/// <summary>Writes entry lines.</summary>
internal static class EntryWriter
{
    internal static string Write(Offcut offcut, LengthUnit unit)
    {
        var text = new StringBuilder();
        if (offcut.Label.Length > 0) text.Append(NeedsMark(offcut.Label) ? $"#{offcut.Label} " : $"{offcut.Label}: ");
        text.Append(NameOf(offcut.Species)).Append(' ').Append(Sizes(offcut, unit));
        if (offcut.Count != 1) text.Append(" x").Append(offcut.Count);
        if (offcut.Faces != Faces.Rough) text.Append(offcut.Faces == Faces.OneSurfaced ? ", one face" : ", s2s");
        if (offcut.Rings != RingOrientation.Unknown) text.Append(", ").Append(RingsWord(offcut.Rings));
        AppendWarp("cup", offcut.Cup);
        AppendWarp("bow", offcut.Bow);
        AppendWarp("twist", offcut.Twist);
        foreach (var defect in offcut.Defects)
            text.Append(", ").Append(DefectText(defect, unit));
        var note = string.Concat(offcut.Note.Select(c => char.IsControl(c) ? ' ' : c)).Trim();
        if (note.Length > 0) text.Append("; ").Append(note);
        return text.ToString();

        void AppendWarp(string word, Length size)
        {
            if (!size.IsZero) text.Append(", ").Append(word).Append(' ').Append(size.ToExactText(unit));
        }
    }

    internal static string DefectText(Defect defect, LengthUnit unit) =>
        $"{DefectWords.Of(defect.Kind)} {defect.From.ToExactText(unit)} to {defect.To.ToExactText(unit)}"
        + (defect.Across is { } across ? $" across {across.From.ToExactText(unit)} to {across.To.ToExactText(unit)}" : "")
        + (defect.IsKept ? " keep" : "");

    internal static string RingsWord(RingOrientation rings) => rings switch
    {
        RingOrientation.Quarter => "quarter sawn",
        RingOrientation.Rift => "rift sawn",
        _ => "flat sawn",
    };

    private static string Sizes(Offcut offcut, LengthUnit unit)
    {
        var (length, width, thickness) = (offcut.Length.ToExactText(unit), offcut.Width.ToExactText(unit), offcut.Thickness.ToExactText(unit));

        // As wide as thick and not longer: a reader would take the sizes from the thinnest up.
        return offcut.Length <= offcut.Width && offcut.Width <= offcut.Thickness
            ? $"{length} long x {width} wide x {thickness} thick"
            : $"{length} x {width} x {thickness}";
    }

    // Behind the mark any label is one; before a colon a species or a word like note would be read as such.
    private static bool NeedsMark(string label) => SpeciesTable.Find(label) is not null || EntryWords.TryFind(label, out _, out _);

    private static string NameOf(string key) => SpeciesTable.Find(key) is { } species ? species.Name : key;
}
