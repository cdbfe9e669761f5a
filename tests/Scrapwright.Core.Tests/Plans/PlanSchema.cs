using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using System.Text.Json.Serialization.Metadata;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Tests.Plans;

/// <summary>Writes the schema of plan.json from the types that are read and written, so that it cannot age.</summary>
internal static class PlanSchema
{
    private static readonly Type[] Named =
    [
        typeof(PlanRequest), typeof(Shop), typeof(Allowance), typeof(Offcut), typeof(Gift), typeof(Design), typeof(MadeGift), typeof(UnmadeGift),
        typeof(Reason), typeof(GlueUp), typeof(FacedBoard), typeof(Strip), typeof(Ladder), typeof(BoardRun), typeof(Step), typeof(Work), typeof(Piece), typeof(Lane),
        typeof(Leftover), typeof(LedgerRow), typeof(WasteRow), typeof(RodUse), typeof(ShoppingItem), typeof(Level), typeof(Operation), typeof(Station),
        typeof(MakerChoices), typeof(ChosenStrip), typeof(MilledOffcut), typeof(FormerStrip), typeof(Length), typeof(Volume),
    ];

    private static readonly JsonSerializerOptions Written = new(PlanJson.Options) { TypeInfoResolver = new DefaultJsonTypeInfoResolver() };
    private static readonly JsonSerializerOptions Readable = new() { WriteIndented = true, Encoder = PlanJson.Options.Encoder };

    /// <summary>The schema as text, with a line feed at the end.</summary>
    public static string Write()
    {
        var root = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["title"] = "Scrapwright plan, version 1",
            ["description"] = "What is made from what: every step, every leftover, and how sure it is. Lengths are exact in picometres (pm); in and mm beside them are for reading. Volumes are decimal digits, in cubic picometres.",
        };
        foreach (var (name, value) in Export(typeof(Plan)).AsObject().ToArray())
        {
            root[name] = value?.DeepClone();
        }

        root["properties"]!["version"] = new JsonObject { ["const"] = 1 };
        root["properties"]!["fingerprint"] = new JsonObject { ["type"] = "string", ["pattern"] = "^[0-9a-f]{64}$" };
        var definitions = new JsonObject();
        foreach (var type in Named)
        {
            definitions[NameOf(type)] = Export(type);
        }

        root["$defs"] = definitions;
        return root.ToJsonString(Readable).ReplaceLineEndings("\n") + "\n";
    }

    private static JsonNode Export(Type type) => Written.GetJsonSchemaAsNode(type, new JsonSchemaExporterOptions
    {
        TreatNullObliviousAsNonNullable = true,
        TransformSchemaNode = (context, node) =>
        {
            var isRoot = context.Path.IsEmpty;
            if (!isRoot && Named.Contains(context.TypeInfo.Type) && context.BaseTypeInfo is null)
            {
                return new JsonObject { ["$ref"] = "#/$defs/" + NameOf(context.TypeInfo.Type) };
            }

            return context.TypeInfo.Type == typeof(Length) ? LengthNode()
                : context.TypeInfo.Type == typeof(Volume) ? new JsonObject { ["type"] = "string", ["pattern"] = "^-?[0-9]+$" }
                : node;
        },
    });

    private static JsonObject LengthNode() => new()
    {
        ["type"] = "object",
        ["properties"] = new JsonObject
        {
            ["pm"] = new JsonObject { ["type"] = "integer", ["description"] = "Picometres; this number counts." },
            ["in"] = new JsonObject { ["type"] = "string", ["description"] = "Inches to read; after ≈ when they are not exact." },
            ["mm"] = new JsonObject { ["type"] = "string", ["description"] = "Millimetres to read, exact." },
        },
        ["required"] = new JsonArray("pm"),
    };

    private static string NameOf(Type type) => JsonNamingPolicy.CamelCase.ConvertName(type.Name);
}
