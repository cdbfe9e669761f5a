using System.Collections.Immutable;

namespace Scrapwright.Core.Wood;

/// <summary>The chart of woods that people react to, all rows as published: [ToxicWoods1990]. Read once, at first use; safe from any thread.</summary>
public static class WoodReactions
{
    /// <summary>Every row, in the chart's order.</summary>
    public static ImmutableArray<WoodReaction> All => LazyRows.Value;

    /// <summary>The rows that are taken to mean a species; empty for most. That does not make its dust harmless.</summary>
    /// <param name="species">The wood.</param>
    public static ImmutableArray<WoodReaction> For(Species species)
    {
        ArgumentNullException.ThrowIfNull(species);
        return For(species.Key);
    }

    internal static ImmutableArray<WoodReaction> For(string speciesKey) => [.. All.Where(reaction => reaction.SpeciesKeys.Contains(speciesKey))];

    private static WoodReaction ToReaction(EmbeddedRow row) => new()
    {
        Wood = row.Required("wood"),
        Kinds = Codes(row, "reaction", code => code switch
        {
            "I" => ReactionKind.Irritant,
            "S" => ReactionKind.Sensitiser,
            "C" => ReactionKind.NasalCancer,
            "P" => ReactionKind.LungInflammation,
            "DT" => ReactionKind.Poison,
            "N" => ReactionKind.Nausea,
            _ => (ReactionKind?)null,
        }),
        Ways = Codes(row, "way", code => code switch
        {
            "S" => ReactionWay.Skin,
            "E" => ReactionWay.Eyes,
            "R" => ReactionWay.Breathing,
            "C" => ReactionWay.Heart,
            "N" => ReactionWay.Nausea,
            _ => (ReactionWay?)null,
        }),
        Strength = Split(row.Required("strength")).Max(code => code == "?" ? 0 : code.All(sign => sign == '+') ? code.Length : throw row.Malformed("strength")),
        Origins = Codes(row, "from", code => code switch
        {
            "D" => ReactionOrigin.Dust,
            "W" => ReactionOrigin.Wood,
            "LB" => ReactionOrigin.LeavesAndBark,
            _ => (ReactionOrigin?)null,
        }),
        Frequency = Codes(row, "frequency", code => code switch
        {
            "R" => ReactionFrequency.Rare,
            "U" => ReactionFrequency.Uncommon,
            "C" => ReactionFrequency.Common,
            _ => (ReactionFrequency?)null,
        }).Max(),
        SpeciesKeys = row.List("species"),
        Only = row.Text("only"),
        Source = row.RequiredSource("source"),
    };

    private static ImmutableArray<T> Codes<T>(EmbeddedRow row, string column, Func<string, T?> meaning) where T : struct =>
        [.. Split(row.Text(column)).Select(code => meaning(code) ?? throw row.Malformed(column)).Distinct()];

    // The chart's lines of one wood stand behind each other, with semicolons between them.
    private static string[] Split(string text) => text.Split([' ', ';'], StringSplitOptions.RemoveEmptyEntries);

    private static class LazyRows
    {
        internal static readonly ImmutableArray<WoodReaction> Value = [.. EmbeddedTable.Read("Wood.reactions.csv").Select(ToReaction)];
    }
}
