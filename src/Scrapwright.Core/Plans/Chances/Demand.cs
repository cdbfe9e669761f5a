using System.Collections.Immutable;

namespace Scrapwright.Core.Plans.Chances;

/// <summary>A size that must be left over: what is expected over it, and what can take it away.</summary>
/// <param name="OverMm">Expected size less the size needed. [mm]</param>
/// <param name="Draws">Each kind of work that takes more or less than expected, by number, with one standard deviation of it. [mm], above zero</param>
internal sealed record Demand(double OverMm, ImmutableArray<(int Draw, double SpreadMm)> Draws);
