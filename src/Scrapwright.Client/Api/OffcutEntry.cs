using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;

namespace Scrapwright.Client.Api;

/// <summary>An offcut as entered.</summary>
/// <param name="Offcut">The offcut; an empty label asks the server for the next free one.</param>
/// <param name="Unit">The unit it was typed in, for showing it again.</param>
public sealed record OffcutEntry(Offcut Offcut, LengthUnit Unit);
