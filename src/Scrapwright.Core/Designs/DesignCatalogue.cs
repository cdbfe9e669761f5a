using System.Collections.Immutable;

namespace Scrapwright.Core.Designs;

/// <summary>The families there are, and a ready design of each.</summary>
public static class DesignCatalogue
{
    /// <summary>All families.</summary>
    public static ImmutableArray<DesignFamily> Families { get; } = [new StripedSquares(), new RodStand(), new UStand()];

    /// <summary>The designs that need no file: each family with its defaults.</summary>
    public static ImmutableArray<Design> BuiltIn { get; } =
        [.. Families.Select(f => new Design { Key = f.Key, Title = f.Title, Family = f.Key })];

    /// <summary>All designs a gift can name: those from files, then the built-in ones that none of them stands in for.</summary>
    /// <param name="own">Designs from files.</param>
    public static ImmutableArray<Design> With(ImmutableArray<Design> own) =>
        [.. own, .. BuiltIn.Where(built => own.All(design => !string.Equals(design.Key, built.Key, StringComparison.OrdinalIgnoreCase)))];

    /// <summary>The family with that key, or null.</summary>
    public static DesignFamily? FindFamily(string key) =>
        Families.FirstOrDefault(f => string.Equals(f.Key, key, StringComparison.OrdinalIgnoreCase));
}
