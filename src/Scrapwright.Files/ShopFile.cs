using System.Text.Json;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Files;

/// <summary>Reads and writes <c>shop.json</c>. What is left out has its default; sizes are texts with a unit, such as <c>"6 in"</c>.</summary>
public static class ShopFile
{
    /// <summary>The file's name in a workshop folder.</summary>
    public const string Name = "shop.json";

    /// <summary>Reads the file's bytes, UTF-8.</summary>
    /// <param name="bytes">The whole file.</param>
    public static FileOutcome<Shop> Parse(ReadOnlySpan<byte> bytes)
    {
        var problems = new ProblemList(Name);
        return Parse(FileText.Decode(bytes, problems), problems);
    }

    /// <summary>Reads the file's text.</summary>
    /// <param name="text">The whole file.</param>
    public static FileOutcome<Shop> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var problems = new ProblemList(Name);
        return Parse(FileText.Check(text, problems), problems);
    }

    /// <summary>The file's text, which is read back to the same shop, exactly.</summary>
    /// <param name="shop">The shop.</param>
    public static string Write(Shop shop) => JsonSerializer.Serialize(shop, PlanJson.Indented).ReplaceLineEndings("\n") + "\n";

    private static FileOutcome<Shop> Parse(string? text, ProblemList problems)
    {
        var shop = text is null ? null : JsonText.Read<Shop>(text, problems);
        if (shop is not null)
        {
            var places = new JsonPlaces(text!);
            var nulls = NullItems(shop).ToList();
            foreach (var path in nulls)
            {
                var (line, column) = places.Of("$." + path);
                problems.Add(line, column, $"{path}: null", FileMessages.AValue);
            }

            foreach (var problem in nulls.Count == 0 ? ShopRules.Check(shop) : [])
            {
                var (line, column) = places.Of("$." + problem.Path);
                problems.Add(line, column, $"{problem.Path}: {problem.Found}", problem.Expected);
            }
        }

        return problems.Outcome(() => shop!);
    }

    // The JSON library refuses null for a property but lets it pass as an item of a list.
    private static IEnumerable<string> NullItems(Shop shop)
    {
        return
        [
            .. Of(shop.Clamps, "clamps"), .. Of(shop.Rods, "rods"), .. Of(shop.Times, "times"), .. Of(shop.RouterBits, "routerBits"), .. Of(shop.Blades, "blades"),
            .. Of(shop.OwnClimates, "ownClimates"), .. Of(shop.Abrasives.Grits, "abrasives.grits"),
        ];

        static IEnumerable<string> Of<T>(IEnumerable<T?> items, string name)
            where T : class => items.Select((item, i) => item is null ? $"{name}[{i}]" : "").Where(path => path.Length > 0);
    }
}
