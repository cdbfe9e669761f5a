using System.Text.Json;
using System.Text.Json.Nodes;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;

namespace Scrapwright.Files;

/// <summary>Reads and writes <c>choices.json</c>: wood kept for later, pins, orders of strips, and work that is done. Every list may be left out.</summary>
public static class ChoicesFile
{
    /// <summary>The file's name in a workshop folder.</summary>
    public const string Name = "choices.json";

    private const int MostOfAKind = 20_000;

    /// <summary>Reads the file's bytes, UTF-8.</summary>
    /// <param name="bytes">The whole file.</param>
    /// <param name="request">The workshop that the choices are for: what they name must be there.</param>
    public static FileOutcome<MakerChoices> Parse(ReadOnlySpan<byte> bytes, PlanRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        var problems = new ProblemList(Name);
        var text = FileText.Decode(bytes, problems);
        var choices = text is null ? null : JsonText.Read<MakerChoices>(text, problems);
        if (choices is not null)
        {
            var places = new JsonPlaces(text!);
            var nulls = Nulls(JsonNode.Parse(text!, documentOptions: new() { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip }), "").ToList();
            foreach (var path in nulls)
            {
                var (line, column) = places.Of("$." + path);
                problems.Add(line, column, $"{path}: null", FileMessages.AValue);
            }

            foreach (var problem in nulls.Count == 0 ? Check(choices, request) : [])
            {
                var (line, column) = places.Of("$." + problem.Path);
                problems.Add(line, column, $"{problem.Path}: {problem.Found}", problem.Expected);
            }
        }

        return problems.Outcome(() => choices!);
    }

    /// <summary>The file's text, which is read back to the same choices, exactly.</summary>
    /// <param name="choices">The choices.</param>
    public static string Write(MakerChoices choices) => JsonSerializer.Serialize(choices, PlanJson.Indented).ReplaceLineEndings("\n") + "\n";

    /// <summary>Every choice that breaks a rule or means nothing in the workshop, in a file as on a screen; empty when all will do.</summary>
    /// <param name="choices">Choices without a null in any list.</param>
    /// <param name="request">The workshop.</param>
    public static IReadOnlyList<ValueProblem> Check(MakerChoices choices, PlanRequest request)
    {
        ArgumentNullException.ThrowIfNull(choices);
        ArgumentNullException.ThrowIfNull(request);
        var checks = new ValueChecks();
        foreach (var (path, count) in (ReadOnlySpan<(string, int)>)[
            ("saved", choices.Saved.Length), ("pins", choices.Pins.Length), ("orders", choices.Orders.Length), ("glued", choices.Glued.Length),
            ("cut", choices.Cut.Length), ("milledStrips", choices.MilledStrips.Length), ("milled", choices.Milled.Length)])
            checks.Within(path, count, 0, MostOfAKind);
        var unit = request.Shop.Unit;
        foreach (var (i, order) in choices.Orders.Index())
        {
            checks.Require(!order.Strips.IsEmpty, $"orders[{i}].strips", "none", "the strips of a glue-up in order");
            foreach (var (s, strip) in order.Strips.Index()) checks.Positive($"orders[{i}].strips[{s}].roughWidth", strip.RoughWidth, unit);
        }

        foreach (var (i, done) in choices.Glued.Index())
        {
            checks.Within($"glued[{i}].blanks", done.Blanks, 1, 1000);
            checks.Within($"glued[{i}].layers", done.Layers, 1, 100);
            checks.Require(!done.Strips.IsEmpty, $"glued[{i}].strips", "none", "the strips that were glued");
            foreach (var (s, strip) in done.Strips.Index())
                foreach (var size in new[] { strip.RoughWidth, strip.Width, strip.Length, strip.Thickness }) checks.Positive($"glued[{i}].strips[{s}]", size, unit);
        }

        foreach (var (i, board) in choices.Cut.Index())
            foreach (var size in new[] { board.RoughWidth, board.Width, board.Length, board.Thickness }) checks.Positive($"cut[{i}]", size, unit);
        foreach (var (i, milled) in choices.MilledStrips.Index())
            foreach (var size in new[] { milled.Strip.RoughWidth, milled.Strip.Width, milled.Strip.Length, milled.Strip.Thickness }) checks.Positive($"milledStrips[{i}].strip", size, unit);
        foreach (var (i, milled) in choices.Milled.Index())
        {
            checks.Within($"milled[{i}].layers", milled.Layers, 1, 100);
            foreach (var (l, lane) in milled.Lanes.Index())
            {
                checks.Positive($"milled[{i}].lanes[{l}].roughWidth", lane.RoughWidth, unit);
                foreach (var (p, piece) in lane.Pieces.Index()) checks.Positive($"milled[{i}].lanes[{l}].pieces[{p}].length", piece.Length, unit);
            }
        }

        // What the choices mean can only be worked out from sizes that are in range.
        if (!checks.Problems.IsEmpty) return checks.Problems;
        return [.. ChoiceFaults.Of(request with { Choices = choices }).Select(f => new ValueProblem(f.Path, f.Found, f.Expected))];
    }

    private static IEnumerable<string> Nulls(JsonNode? node, string path) => node switch
    {
        null => [path],
        JsonObject members => members.SelectMany(m => Nulls(m.Value, path.Length == 0 ? m.Key : $"{path}.{m.Key}")),
        JsonArray items => items.SelectMany((item, i) => Nulls(item, $"{path}[{i}]")),
        _ => [],
    };
}
