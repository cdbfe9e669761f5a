using System.Collections.Immutable;
using System.Globalization;

namespace Scrapwright.Core.Wood;

/// <summary>Published limits and classes of wood dust. Read once, at first use; safe from any thread.</summary>
public static class DustLimits
{
    internal const string WesternRedcedarKey = "western-redcedar";

    /// <summary>Every limit, by body.</summary>
    public static ImmutableArray<DustLimit> All => LazyRows.Limits;

    /// <summary>The limits that are for a species' dust. In mixed dust the hardwood's count.</summary>
    /// <param name="species">The wood.</param>
    public static ImmutableArray<DustLimit> For(Species species) => [.. All.Where(limit => limit.AppliesTo(species))];

    /// <summary>What is held of a species' dust and cancer.</summary>
    /// <param name="species">The wood.</param>
    public static DustClass ClassOf(Species species)
    {
        ArgumentNullException.ThrowIfNull(species);
        return ClassRow(species.Key)?.Class ?? DustClass.NotClassified;
    }

    /// <summary>The class in words with its source, or null.</summary>
    internal static string? ClassInWords(string speciesKey) => ClassRow(speciesKey)?.Words;

    private static (DustClass Class, string Words)? ClassRow(string speciesKey)
    {
        foreach (var row in LazyRows.Classes)
        {
            if (row.SpeciesKeys.Contains(speciesKey))
            {
                return (row.Class, row.Words);
            }
        }

        return null;
    }

    private static DustLimit ToLimit(EmbeddedRow row) => new()
    {
        Key = row.Required("key"),
        Body = row.Required("body"),
        LimitMgPerM3 = row.RequiredNumber("limit"),
        Fraction = row.Word<DustFraction>("fraction"),
        Wood = row.Word<DustWood>("wood"),
        IsBinding = row.Flag("binding"),
        InForceSince = row.Text("since") is { Length: > 0 } since ? DateOnly.ParseExact(since, "yyyy-MM-dd", CultureInfo.InvariantCulture) : null,
        Note = row.Text("note"),
        Source = row.RequiredSource("source"),
    };

    private static (DustClass Class, string Words, ImmutableArray<string> SpeciesKeys) ToClass(EmbeddedRow row) =>
        (row.Word<DustClass>("class"), $"{row.Required("words")} [{row.RequiredSource("source").Key}]", row.List("species"));

    private static class LazyRows
    {
        internal static readonly ImmutableArray<DustLimit> Limits = [.. EmbeddedTable.Read("Wood.dust-limits.csv").Select(ToLimit)];

        internal static readonly ImmutableArray<(DustClass Class, string Words, ImmutableArray<string> SpeciesKeys)> Classes =
            [.. EmbeddedTable.Read("Wood.dust-classes.csv").Select(ToClass)];
    }
}
