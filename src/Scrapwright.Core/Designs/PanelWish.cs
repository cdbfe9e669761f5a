using System.Collections.Immutable;

namespace Scrapwright.Core.Designs;

/// <summary>How a panel shall look.</summary>
/// <param name="Pattern">Order of the strips.</param>
/// <param name="Species">Species wished, keys; empty for any. Wishes are met where the pile allows.</param>
/// <param name="MinimumStrips">Fewest strips; at least 2 for a striped panel, 1 for a plain one.</param>
/// <param name="MaximumStrips">Most strips.</param>
public sealed record PanelWish(StripPattern Pattern, ImmutableArray<string> Species, int MinimumStrips, int MaximumStrips);
