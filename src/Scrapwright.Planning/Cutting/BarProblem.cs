using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Planning.Cutting;

/// <summary>One-dimensional cutting stock: all pieces from the cheapest bars.</summary>
/// <param name="Items">What is wanted.</param>
/// <param name="Stocks">What it can be cut from.</param>
/// <param name="Kerf">Width of the saw cut, taken away between two pieces and before the leftover; zero or more.</param>
internal sealed record BarProblem(ImmutableArray<BarItem> Items, ImmutableArray<BarStock> Stocks, Length Kerf);
