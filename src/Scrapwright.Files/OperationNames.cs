using System.Collections.Immutable;
using System.Text.Json;
using Scrapwright.Core.Shops;

namespace Scrapwright.Files;

/// <summary>Names of operations in tables: <c>edge-joint</c>; read as the shop says it too, such as <c>Joint edges</c>.</summary>
internal static class OperationNames
{
    /// <summary>Every name, in working order.</summary>
    internal static ImmutableArray<string> All { get; } = [.. Enum.GetValues<Operation>().Select(Of)];

    internal static string Of(Operation operation) => JsonNamingPolicy.KebabCaseLower.ConvertName(operation.ToString());

    /// <summary>The operation of a name, whatever the case of its letters; null when it is none.</summary>
    internal static Operation? Find(string name) => Enum.GetValues<Operation>().Where(operation => Is(name, Of(operation)) || Is(name, ShopWords.Of(operation))).Select(operation => (Operation?)operation).FirstOrDefault();

    private static bool Is(string name, string known) => string.Equals(name.Trim(), known, StringComparison.OrdinalIgnoreCase);
}
