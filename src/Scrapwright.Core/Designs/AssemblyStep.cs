using System.Collections.Immutable;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Designs;

/// <summary>One thing to do once the parts are cut, in order.</summary>
/// <param name="Operation">Kind of work.</param>
/// <param name="Station">Where.</param>
/// <param name="Parts">Keys of the parts worked on.</param>
/// <param name="Text">What to do, one or two short sentences. Lengths stand in it as {0}, {1} … filled from <paramref name="Sizes"/>.</param>
/// <param name="Sizes">The lengths that the text names.</param>
public sealed record AssemblyStep(
    Operation Operation,
    Station Station,
    ImmutableArray<string> Parts,
    string Text,
    ImmutableArray<Measures.Length> Sizes);
