using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Wood;

/// <summary>How much a size changes with moisture, and by which model. <c>default</c> is no change.</summary>
/// <param name="ChangeMm">Positive when it swells. [mm]</param>
/// <param name="Model">The model used.</param>
/// <param name="Source">Where its values come from.</param>
public readonly record struct SizeChange(double ChangeMm, MovementModel Model, ValueSource? Source)
{
    /// <summary>The change as a length, negative when the wood shrinks, to the nearest picometre. Here the physics crosses back to lengths.</summary>
    public Length Change => Length.FromMillimetresRounded(ChangeMm);
}
