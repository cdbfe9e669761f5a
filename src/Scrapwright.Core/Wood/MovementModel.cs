namespace Scrapwright.Core.Wood;

/// <summary>The model a change of size was worked out by.</summary>
public enum MovementModel
{
    /// <summary>Dimensional change coefficient, <see cref="Movement.WidthChangeByCoefficient"/>: both moistures within 6 to 14 %.</summary>
    ByCoefficient,

    /// <summary>Total shrinkage, <see cref="Movement.WidthChangeByShrinkage"/>: any moisture up to fibre saturation.</summary>
    ByShrinkage,
}
