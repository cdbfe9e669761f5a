using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using Json.Schema;
using Scrapwright.Core.Plans;

namespace Scrapwright.Core.Tests.Plans;

public sealed class PlanSchemaTests
{
    private static readonly string SchemaPath = Path.Combine(Root(), "docs", "plan.schema.json");
    private static readonly Lazy<JsonSchema> Schema = new(() => JsonSchema.FromText(File.ReadAllText(SchemaPath)));
    private static readonly string PlanText = PlanJson.Write(ExamplePlans.Full);

    [Fact]
    public void The_published_schema_is_that_of_the_types()
    {
        // To publish a changed one: SCRAPWRIGHT_PUBLISH_SCHEMA=1
        var schema = PlanSchema.Write();
        if (Environment.GetEnvironmentVariable("SCRAPWRIGHT_PUBLISH_SCHEMA") == "1")
        {
            File.WriteAllText(SchemaPath, schema);
        }

        Assert.Equal(schema, File.ReadAllText(SchemaPath).ReplaceLineEndings("\n"));
    }

    [Fact]
    public void A_plan_is_valid()
    {
        Assert.True(IsValid(JsonNode.Parse(PlanText)!));
        Assert.True(IsValid(JsonNode.Parse(PlanJson.Write(ExamplePlans.Squares))!));
    }

    [Fact]
    public void A_plan_without_a_required_member_is_not_valid_and_not_read()
    {
        var count = Removable(JsonNode.Parse(PlanText)!).Count();

        Gen.Int[0, count - 1].Sample(
            which =>
            {
                var root = JsonNode.Parse(PlanText)!;
                var (parent, name) = Removable(root).ElementAt(which);
                parent.Remove(name);
                return !IsValid(root) && !IsRead(root);
            },
            iter: 40, threads: 1);
    }

    [Fact]
    public void A_plan_with_an_unknown_member_is_not_valid_and_not_read()
    {
        var root = JsonNode.Parse(PlanText)!;
        root["steps"]![0]!["colour"] = "red";

        Assert.False(IsValid(root));
        Assert.False(IsRead(root));
    }

    /// <summary>Members that may not be left out, by the reading side's own account: those of the plan outside its request, and the exact sizes.</summary>
    private static IEnumerable<(JsonObject Parent, string Name)> Removable(JsonNode root)
    {
        string[] optional = ["version", "in", "mm", "glueUp", "gift", "assemblyIndex", "taken", "takenFirst", "kerf", "cuts", "setting", "workaround"];
        return Objects(root).Where(o => !o.GetPath().StartsWith("$.request", StringComparison.Ordinal))
            .SelectMany(o => o.Where(m => !optional.Contains(m.Key)).Select(m => (o, m.Key)));
    }

    private static IEnumerable<JsonObject> Objects(JsonNode? node) => node switch
    {
        JsonObject o => [o, .. o.SelectMany(m => Objects(m.Value))],
        JsonArray a => a.SelectMany(Objects),
        _ => [],
    };

    private static bool IsValid(JsonNode node)
    {
        using var document = JsonDocument.Parse(node.ToJsonString());
        return Schema.Value.Evaluate(document.RootElement).IsValid;
    }

    private static bool IsRead(JsonNode node)
    {
        try
        {
            PlanJson.Read(node.ToJsonString());
            return true;
        }
        catch (JsonException)
        {
            return false;
        }
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Scrapwright.slnx")))
        {
            folder = folder.Parent ?? throw new InvalidOperationException("No Scrapwright.slnx above the test.");
        }

        return folder.FullName;
    }
}
