using System.Collections.Immutable;

namespace Scrapwright.Planning.Search;

/// <summary>A panel part of the gifts of a group.</summary>
/// <param name="Types">Type of glue-up of each mode.</param>
/// <param name="Ways">For each way to get its blanks, how many glue-ups of each mode.</param>
/// <param name="Shared">Glue-ups it may share with another gift: type, and its share of the pieces. Whatever the other gift does, its shares of all gifts add up to one.</param>
internal sealed record GroupPart(ImmutableArray<int> Types, ImmutableArray<ImmutableArray<int>> Ways, ImmutableArray<(int Type, double Share)> Shared)
{
    /// <summary>The least that all ways to get its blanks come to, when a glue-up of each type comes to so much; infinity when there is no way.</summary>
    internal double Least(Func<int, double> ofType) => Ways
        .Select(way => way.Select((n, mode) => n == 0 ? 0 : n * ofType(Types[mode])).Sum())
        .Concat(Shared.Select(s => s.Share * ofType(s.Type)))
        .DefaultIfEmpty(double.PositiveInfinity).Min();
}
