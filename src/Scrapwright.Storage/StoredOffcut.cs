using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;

namespace Scrapwright.Storage;

/// <summary>An offcut as kept.</summary>
/// <param name="Id">Which row; above zero, never used again.</param>
/// <param name="Offcut">The offcut.</param>
/// <param name="Unit">The unit it was typed in.</param>
public sealed record StoredOffcut(long Id, Offcut Offcut, LengthUnit Unit);
