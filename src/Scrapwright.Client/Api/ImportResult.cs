using System.Collections.Immutable;

namespace Scrapwright.Client.Api;

/// <summary>What an import brought in.</summary>
/// <param name="Offcuts">Entries of the new pile; null when the files had none and the old pile stays.</param>
/// <param name="Gifts">Gifts of the new list; null when the files had none and the old list stays.</param>
/// <param name="Shop">Whether the shop was replaced.</param>
/// <param name="Designs">Designs read from files; null when the files had none and the old ones stay.</param>
public sealed record ImportResult(int? Offcuts, int? Gifts, bool Shop, int? Designs)
{
    /// <summary>Whether the hours were replaced.</summary>
    public bool Hours { get; init; }

    /// <summary>Occasions read; null when the files had none and the old ones stay.</summary>
    public int? Occasions { get; init; }

    /// <summary>Rows of what was given; null when the files had none and the old ones stay.</summary>
    public int? Given { get; init; }

    /// <summary>Readings of time; null when the files had none and the old ones stay.</summary>
    public int? Times { get; init; }

    /// <summary>Prices; null when the files had none and the old ones stay.</summary>
    public int? Prices { get; init; }

    /// <summary>The maker's own jigs; null when the files had none and the old ones stay.</summary>
    public int? Jigs { get; init; }

    /// <summary>Questions about values that were read but are unlikely, each with its place.</summary>
    public ImmutableArray<string> Doubts { get; init; } = [];
}
