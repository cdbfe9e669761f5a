namespace Scrapwright.Core.Finishing;

/// <summary>How dense a wood is, as tables of clamping pressure divide it.</summary>
public enum DensityClass
{
    /// <summary>Soft and light: pine, poplar, cedar.</summary>
    Low,

    /// <summary>In between: cherry, walnut, soft maple.</summary>
    Medium,

    /// <summary>Dense: oak, hard maple, beech, hickory.</summary>
    High,
}
