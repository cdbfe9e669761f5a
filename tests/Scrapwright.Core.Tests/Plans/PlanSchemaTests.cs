using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
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
        var root = JsonNode.Parse(PlanText)!;
        var accepted = new List<string>();
        var places = Removable(root).DistinctBy(place => (Place(place.Parent), place.Name)).ToList();

        foreach (var (parent, name) in places)
        {
            var value = parent[name];
            parent.Remove(name);
            if (IsValid(root) || IsRead(root))
            {
                accepted.Add(Place(parent) + "." + name);
            }

            parent[name] = value;
        }

        Assert.NotEmpty(places);
        Assert.Empty(accepted);
    }

    [Fact]
    public void A_reason_without_its_kind_is_told_with_its_place()
    {
        var root = JsonNode.Parse(PlanText)!;
        root["unmade"]![0]!["reasons"]![0]!.AsObject().Remove("kind");

        var fault = Assert.Throws<JsonException>(() => PlanJson.Read(root.ToJsonString()));
        Assert.Equal("$.unmade[0].reasons[0]", fault.Path);
        Assert.NotNull(fault.LineNumber);
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
        string[] optional = ["version", "in", "mm", "glueUp", "gift", "assemblyIndex", "taken", "takenFirst", "kerf", "cuts", "setting", "workaround", "before", "layers", "heartUp", "also", "sister", "turnedOver", "faced", "$.made[].chancePerMille"];
        return Objects(root).Where(o => !o.GetPath().StartsWith("$.request", StringComparison.Ordinal))
            .SelectMany(o => o.Where(m => !optional.Contains(m.Key) && !optional.Contains($"{Place(o)}.{m.Key}")).Select(m => (o, m.Key)));
    }

    /// <summary>Where an object stands, the same for every entry of a list.</summary>
    private static string Place(JsonObject parent) => Regex.Replace(parent.GetPath(), @"\[\d+\]", "[]");

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
