using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Shops;

/// <summary>Dowel rod of one diameter, on hand or to be had.</summary>
/// <param name="Species">Key of the species.</param>
/// <param name="Diameter">Diameter of the rod.</param>
/// <param name="Length">Length of one rod as sold.</param>
/// <param name="OnHand">How many rods are on hand.</param>
public sealed record RodStock(string Species, Length Diameter, Length Length, int OnHand);
