using System.Collections.Immutable;
using System.Globalization;
using Scrapwright.Core.Shops;

namespace Scrapwright.Files;

/// <summary>Reads and writes <c>jigs.csv</c>: the maker's own jigs, and own figures for those of the table. An empty cell of one of the table takes the table's figure.</summary>
public static class JigsFile
{
    /// <summary>The file's name in a workshop folder.</summary>
    public const string Name = "jigs.csv";

    /// <summary>The columns, in the order written; the first must be there.</summary>
    public static ImmutableArray<string> Columns { get; } = ["jig", "name", "operations", "set-up-minutes", "each-seconds", "make-minutes", "material", "small", "have", "note"];

    /// <summary>Reads the file's bytes, UTF-8.</summary>
    /// <param name="bytes">The whole file.</param>
    public static FileOutcome<ImmutableArray<Jig>> Parse(ReadOnlySpan<byte> bytes)
    {
        var problems = new ProblemList(Name);
        return Parse(FileText.Decode(bytes, problems), problems);
    }

    /// <summary>Reads the file's text.</summary>
    /// <param name="text">The whole file.</param>
    public static FileOutcome<ImmutableArray<Jig>> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var problems = new ProblemList(Name);
        return Parse(FileText.Check(text, problems), problems);
    }

    /// <summary>The file's text, which is read back to the same jigs.</summary>
    /// <param name="jigs">The jigs.</param>
    public static string Write(IEnumerable<Jig> jigs)
    {
        ArgumentNullException.ThrowIfNull(jigs);
        return TableWriter.Write(Columns, jigs.Select(jig => new[]
        {
            jig.Key, jig.Name, string.Join("; ", jig.Operations.Select(OperationNames.Of)), Whole(jig.SetUpMinutes), Whole(jig.EachSeconds), Whole(jig.MakeMinutes),
            Amounts.Write(jig.Material), Word(jig.OnlySmall), Word(jig.IsOwned), jig.Note,
        }));
    }

    private static FileOutcome<ImmutableArray<Jig>> Parse(string? text, ProblemList problems)
    {
        var jigs = ImmutableArray.CreateBuilder<Jig>();
        if (text is not null && TableReader.Read(text, Columns, required: 1, problems) is { } table)
        {
            var lines = new Dictionary<string, int>(StringComparer.Ordinal);
            foreach (var row in table.Rows)
            {
                if (new JigCells(row, table.HasDecimalCommas, problems).Read() is not { } jig) continue;
                jigs.Add(jig);
                if (!lines.TryAdd(jig.Key, row.Line)) row.Refuse("jig", jig.Key, FileMessages.OnlyOnce(lines[jig.Key]), problems);
            }
        }

        return problems.Outcome(jigs.ToImmutable);
    }

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static string Word(bool isSo) => isSo ? "yes" : "no";
}
