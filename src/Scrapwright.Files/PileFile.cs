using System.Collections.Immutable;
using System.Globalization;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Wood;

namespace Scrapwright.Files;

/// <summary>Reads and writes <c>pile.csv</c>: one row for each entry of the pile.</summary>
public static class PileFile
{
    /// <summary>The file's name in a workshop folder.</summary>
    public const string Name = "pile.csv";

    /// <summary>The columns, in the order written.</summary>
    public static ImmutableArray<string> Columns { get; } =
        ["label", "species", "length", "width", "thickness", "count", "faces", "grain", "cup", "bow", "twist", "defects", "note"];

    /// <summary>How many of <see cref="Columns"/>, from the first, must be there.</summary>
    public const int RequiredColumns = 5;

    /// <summary>Reads the file's bytes, UTF-8.</summary>
    /// <param name="bytes">The whole file.</param>
    /// <param name="bareUnit">Unit of numbers without one.</param>
    public static FileOutcome<ImmutableArray<Offcut>> Parse(ReadOnlySpan<byte> bytes, LengthUnit bareUnit)
    {
        var problems = new ProblemList(Name);
        return Parse(FileText.Decode(bytes, problems), bareUnit, problems);
    }

    /// <summary>Reads the file's text.</summary>
    /// <param name="text">The whole file.</param>
    /// <param name="bareUnit">Unit of numbers without one.</param>
    public static FileOutcome<ImmutableArray<Offcut>> Parse(string text, LengthUnit bareUnit)
    {
        ArgumentNullException.ThrowIfNull(text);
        var problems = new ProblemList(Name);
        return Parse(FileText.Check(text, problems), bareUnit, problems);
    }

    /// <summary>The file's text, which is read back to the same offcuts, exactly.</summary>
    /// <param name="pile">The offcuts.</param>
    /// <param name="unit">Unit of every size written.</param>
    public static string Write(IEnumerable<Offcut> pile, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(pile);
        return TableWriter.Write(Columns, pile.Select(offcut => Cells(offcut, unit)));
    }

    private static FileOutcome<ImmutableArray<Offcut>> Parse(string? text, LengthUnit bareUnit, ProblemList problems)
    {
        var pile = ImmutableArray<Offcut>.Empty;
        if (text is not null && TableReader.Read(text, Columns, RequiredColumns, problems) is { } table) pile = PileRows.Read(table, bareUnit, problems);
        return problems.Outcome(() => pile);
    }

    private static string[] Cells(Offcut offcut, LengthUnit unit) =>
    [
        offcut.Label,
        SpeciesTable.Find(offcut.Species)?.Name ?? offcut.Species,
        offcut.Length.ToExactText(unit),
        offcut.Width.ToExactText(unit),
        offcut.Thickness.ToExactText(unit),
        offcut.Count == 1 ? "" : offcut.Count.ToString(CultureInfo.InvariantCulture),
        PileWords.Of(offcut.Faces),
        PileWords.Of(offcut.Rings),
        OrNothing(offcut.Cup, unit),
        OrNothing(offcut.Bow, unit),
        OrNothing(offcut.Twist, unit),
        DefectList.Write(offcut.Defects, unit),
        offcut.Note,
    ];

    private static string OrNothing(Length size, LengthUnit unit) => size.IsZero ? "" : size.ToExactText(unit);
}
