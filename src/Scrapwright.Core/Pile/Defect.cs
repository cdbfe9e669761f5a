using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Pile;

/// <summary>A stretch of an offcut that the plan cuts round, over the whole width.</summary>
/// <param name="Kind">What is wrong there.</param>
/// <param name="From">Where it begins, from the marked end, along the grain.</param>
/// <param name="To">Where it ends, from the marked end; never before <paramref name="From"/>.</param>
public sealed record Defect(DefectKind Kind, Length From, Length To);
