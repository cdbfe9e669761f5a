using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;

namespace Scrapwright.Client.Api;

/// <summary>An offcut as stored.</summary>
/// <param name="Id">Which row.</param>
/// <param name="Offcut">The offcut.</param>
/// <param name="Unit">The unit it was typed in.</param>
public sealed record OffcutRow(long Id, Offcut Offcut, LengthUnit Unit);
