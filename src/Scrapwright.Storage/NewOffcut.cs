using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;

namespace Scrapwright.Storage;

/// <summary>An offcut to keep.</summary>
/// <param name="Offcut">The offcut; an empty label is replaced by the next free one of its species.</param>
/// <param name="Unit">The unit it was typed in.</param>
public sealed record NewOffcut(Offcut Offcut, LengthUnit Unit);
