using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Sheets;

/// <summary>What the maker does at the bench so that sisters lie opposite each other.</summary>
public static class BookWords
{
    /// <summary>What to mind at a step; empty where there are no sisters.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="step">One of its steps.</param>
    public static string Of(Plan plan, Step step)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(step);
        return step.Operation switch
        {
            Operation.GlueUp when plan.GlueUps.FirstOrDefault(g => g.Id == step.GlueUp) is { } glueUp => Of(glueUp),
            Operation.ResawStrips => AtTheSaw(plan),
            _ => "",
        };
    }

    // The sawn faces are planed clean and the ends are cut; the edges, jointed before, keep the mark. Common practice, no source.
    private static string AtTheSaw(Plan plan)
    {
        var pairs = plan.GlueUps.SelectMany(g => g.Strips).Where(s => s.Sister.Length > 0 && !s.TurnedOver).Select(s => $"{s.Piece} and {s.Sister}").ToArray();
        return pairs.Length == 0 ? "" : $"Opened like a book later: {string.Join(", ", pairs)}. Before sawing draw a triangle across one edge of the stick: its parts show which faces lay together.";
    }

    /// <summary>Which strips of a glue-up are opened like a book, and which of them is turned over; empty when it has no sisters.</summary>
    /// <param name="glueUp">The glue-up.</param>
    public static string Of(GlueUp glueUp)
    {
        ArgumentNullException.ThrowIfNull(glueUp);
        var letters = Sisters.LettersOf(glueUp.Strips);
        var pairs = glueUp.Strips.Zip(letters).Where(s => s.Second.Length > 0).GroupBy(s => s.Second, s => s.First).OrderBy(g => g.Key, StringComparer.Ordinal)
            .Select(pair => $"{pair.Key} {string.Join(" + ", pair.OrderBy(s => s.TurnedOver).Select(s => s.Piece))}").ToArray();
        return pairs.Length == 0 ? "" : $"Open like a book, both sawn faces up, marked ends together: {string.Join(", ", pairs)}. Turn over the second{(pairs.Length > 1 ? " of each" : "")}.";
    }
}
