using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Plans;

/// <summary>The stretch of a piece's width that came from one offcut.</summary>
/// <param name="Offcut">Label of the single offcut (see <see cref="Pile.Offcut.Pieces"/>).</param>
/// <param name="Width">Its width within the piece.</param>
public sealed record Lane(string Offcut, Length Width);
