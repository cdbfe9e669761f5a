using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Milling;

/// <summary>A glue-up with the strips that its size hangs on.</summary>
/// <param name="Needs">What it must measure.</param>
/// <param name="Overlap">Shared length of its strips.</param>
/// <param name="Strips">Its strips; their order does not matter.</param>
public sealed record WorkedPanel(PanelNeeds Needs, Length Overlap, ImmutableArray<WorkedStrip> Strips);
