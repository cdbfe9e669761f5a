using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Pile;

/// <summary>Defects in one line of text, such as <c>knot 4-5; check 0-1 1/2; split last 2; sapwood across 0-1/2; knot 7-8 keep</c>.</summary>
public static class DefectList
{
    /// <summary>Reads defects separated by semicolons or commas; an empty text has none.</summary>
    /// <param name="text">What a person wrote.</param>
    /// <param name="length">Length of the offcut they lie on.</param>
    /// <param name="width">Its width.</param>
    /// <param name="bareUnit">Unit of numbers without one.</param>
    public static ParseResult<ImmutableArray<Defect>> Parse(string text, Length length, Length width, LengthUnit bareUnit)
    {
        ArgumentNullException.ThrowIfNull(text);
        return new EntryReader(text.Replace(';', ','), bareUnit).ReadDefects(length, width);
    }

    /// <summary>Writes defects so that they are read back exactly.</summary>
    /// <param name="defects">The defects.</param>
    /// <param name="unit">Unit of every size written.</param>
    public static string Write(ImmutableArray<Defect> defects, LengthUnit unit) =>
        string.Join("; ", defects.Select(defect => EntryWriter.DefectText(defect, unit)));
}
