using System.Collections.Immutable;
using System.Text.Json;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Calendar;

/// <summary>Names of tasks and settings: made of what they are, so that they stay the same when the plan is made again.</summary>
internal static class TaskNames
{
    // More labels than these make no title: our own choice.
    private const int MostNamed = 2;

    /// <summary>Name of a task: <c>face-joint/oak-tray+elm-tray</c>, <c>glue-up/G1</c>, <c>sand@2/elm-tray</c>.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="step">One of its steps.</param>
    /// <param name="station">Where it is done.</param>
    /// <param name="gifts">What it is for.</param>
    internal static string Of(Plan plan, Step step, Station station, ImmutableArray<string> gifts)
    {
        var operation = Word(step.Operation);
        if (step.GlueUp.Length > 0) return $"{operation}/{step.GlueUp}";
        if (BoardOf(step) is { Length: > 0 } board) return $"{operation}/{board}";
        var hand = station != step.Station ? "-by-hand" : "";
        if (step.AssemblyIndex >= 0) return $"{operation}{hand}@{step.AssemblyIndex + 1}/{step.Gift}";
        // Edges are jointed again after ripping.
        var round = plan.Steps.Count(s => s.Operation == step.Operation && s.AssemblyIndex < 0 && s.Number <= step.Number);
        return $"{operation}{(round > 1 ? $"-{round}" : "")}{hand}/{(gifts.IsEmpty ? "no-gift" : string.Join('+', gifts))}";
    }

    /// <summary>Label of the board that a step glues face to face; empty for any other step.</summary>
    internal static string BoardOf(Step step) => step is { Operation: Operation.FaceGlue, Works: [{ Out: [var board] }] } ? board.Id : "";

    /// <summary>Key of a setting: <c>face-joint@jointer</c>, <c>finish-drying-oil@finishing</c>.</summary>
    internal static string Setting(Operation operation, Station station, string finish = "") =>
        $"{Word(operation)}{(finish.Length > 0 ? $"-{finish}" : "")}@{Word(station)}";

    /// <summary>An operation or station as one word.</summary>
    internal static string Word<T>(T value)
        where T : struct, Enum => JsonNamingPolicy.KebabCaseLower.ConvertName(value.ToString());

    /// <summary>What to do, and for whom.</summary>
    internal static string Title(Step step, int pieces, ImmutableArray<string> gifts) => step.GlueUp + BoardOf(step) is { Length: > 0 } glued
        ? $"{ShopWords.Of(step.Operation)} {glued}: {string.Join(", ", gifts)}"
        : gifts switch
        {
            [] => $"{ShopWords.Of(step.Operation)}: {Count(pieces)}",
            [var gift] => $"{ShopWords.Of(step.Operation)}: {gift}, {Count(pieces)}",
            { Length: <= MostNamed } => $"{ShopWords.Of(step.Operation)}: {Count(pieces)} for {string.Join(" and ", gifts)}",
            _ => $"{ShopWords.Of(step.Operation)}: {Count(pieces)} for {gifts.Length} gifts",
        };

    private static string Count(int pieces) => pieces == 1 ? "1 piece" : $"{pieces} pieces";
}
