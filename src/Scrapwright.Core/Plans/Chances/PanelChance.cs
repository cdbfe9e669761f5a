using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Plans.Chances;

/// <summary>How likely a panel holds its sizes, and at what width it lands.</summary>
/// <param name="GlueUp">Id of the glue-up.</param>
/// <param name="Sizes">The chances.</param>
/// <param name="Width">Width it is expected to land at once its outer edges are clean, before it is cut to size.</param>
/// <param name="WidthSpread">One standard deviation of that width.</param>
/// <param name="StripsSpread">One standard deviation of the glued width before it is trimmed.</param>
/// <param name="NeededWidth">Width of the part.</param>
public sealed record PanelChance(string GlueUp, SizeChances Sizes, Length Width, Length WidthSpread, Length StripsSpread, Length NeededWidth);
