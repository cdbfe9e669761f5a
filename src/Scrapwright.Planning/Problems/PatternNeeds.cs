using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Planning.Problems;

/// <summary>What the gifts together want of an offcut.</summary>
/// <param name="SolidWidths">Rough widths of strips for solid parts.</param>
/// <param name="Thinnest">Least thickness that any strip needs.</param>
/// <param name="AccentWidth">Rough width of the narrowest strip that can be glued, when a panel is wished with an accent; zero otherwise.</param>
internal sealed record PatternNeeds(ImmutableArray<Length> SolidWidths, Length Thinnest, Length AccentWidth);
