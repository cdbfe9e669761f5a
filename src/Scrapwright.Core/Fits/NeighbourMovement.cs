using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Fits;

/// <summary>How two neighbours of a panel move against each other, in the worse of the driest and the dampest month.</summary>
/// <param name="First">Place of the first in the panel, from 0; the other is the next.</param>
/// <param name="DifferencePercent">How much more of its thickness one moves than the other; zero or more. [%]</param>
/// <param name="Ridge">That as a step at the joint, on both faces together.</param>
/// <param name="IsUpTo">True when the rings of either are unknown: the ridge is the most it can be.</param>
/// <param name="Felt">True when the ridge is felt with a fingertip: <see cref="PanelMovement.FeltRidge"/> or more.</param>
public sealed record NeighbourMovement(int First, double DifferencePercent, Length Ridge, bool IsUpTo, bool Felt);
