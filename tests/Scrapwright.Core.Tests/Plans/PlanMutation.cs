using System.Numerics;
using System.Text.Json;
using System.Text.Json.Nodes;
using Scrapwright.Core.Plans;

namespace Scrapwright.Core.Tests.Plans;

/// <summary>Every number that stands in a plan's file, and ways to change one.</summary>
internal static class PlanMutation
{
    /// <summary>Where the numbers are: whole and decimal numbers, and volumes, which are texts of digits. Readable sizes beside exact ones are none.</summary>
    public static IEnumerable<JsonValue> Numbers(JsonNode? node) => node switch
    {
        JsonObject o => o.SelectMany(member => Numbers(member.Value)),
        JsonArray a => a.SelectMany(Numbers),
        JsonValue v when v.GetValueKind() == JsonValueKind.Number || IsVolume(v) => [v],
        _ => [],
    };

    /// <summary>The number changed by a whole amount; what is not a whole number changes by that many hundredths.</summary>
    public static JsonNode Changed(JsonValue value, long by)
    {
        if (IsVolume(value))
        {
            return JsonValue.Create((BigInteger.Parse(value.GetValue<string>()) + by).ToString());
        }

        // A sum beyond 64 bits wraps round, so that the far ends of the range come up too.
        var text = value.ToJsonString();
        return long.TryParse(text, out var whole)
            ? JsonNode.Parse(unchecked(whole + by).ToString())!
            : JsonValue.Create(double.Parse(text) + (by / 100.0));
    }

    /// <summary>What the audit says of a changed plan; a reader's refusal counts as one finding.</summary>
    public static int Findings(JsonNode changed, Func<Plan, int> check)
    {
        Plan plan;
        try
        {
            plan = PlanJson.Read(changed.ToJsonString());
        }
        catch (JsonException)
        {
            return 1;
        }

        return check(plan);
    }

    /// <summary>A bound may move to its own side.</summary>
    public static bool IsBound(JsonValue value) => value.GetPath().StartsWith("$.levels", StringComparison.Ordinal) && value.GetPath().EndsWith(".bound", StringComparison.Ordinal);

    private static bool IsVolume(JsonValue value) =>
        value.GetValueKind() == JsonValueKind.String
        && value.Parent is JsonObject
        && value.GetPropertyName() is "in" or "faced" or "parts" or "kept" or "scrap" or "volume"
        && value.GetPath().StartsWith("$.ledger", StringComparison.Ordinal);
}
