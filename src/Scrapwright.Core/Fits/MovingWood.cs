using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Fits;

/// <summary>A stretch of one wood, as long as it is when fitted: one strip of a panel's width, one thickness, one board along its grain.</summary>
/// <param name="Species">Key of the species; empty for what does not move, such as metal. [<see cref="SpeciesTable"/>]</param>
/// <param name="Rings">How the growth rings stand in its end grain.</param>
/// <param name="Direction">Which way the stretch lies in the wood.</param>
/// <param name="Size">How long it is when fitted.</param>
public sealed record MovingWood(string Species, RingOrientation Rings, GrainDirection Direction, Length Size);
