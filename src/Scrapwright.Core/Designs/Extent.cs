using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Designs;

/// <summary>So much of a part in one direction: one term of an opening, or of what goes into it.</summary>
/// <param name="Part">Key of the part.</param>
/// <param name="Direction">Which way the size lies in it.</param>
/// <param name="Size">All of it together; below zero when it takes from the opening, as a rod that stands in it does.</param>
/// <param name="Copies">How many copies of the part share the size, 1 or more; of more copies, those that matter most are taken.</param>
public sealed record Extent(string Part, GrainDirection Direction, Length Size, int Copies = 1);
