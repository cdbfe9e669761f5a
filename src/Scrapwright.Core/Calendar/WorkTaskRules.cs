using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Calendar;

/// <summary>What tasks depend on besides the plan.</summary>
public sealed record WorkTaskRules
{
    /// <summary>How warm it is when glue sets; null for 21 °C, which tables of glues are made for. [°C]</summary>
    public double? GlueCelsius { get; init; }

    /// <summary>A task at a machine that takes longer, its set-up counted, is divided between pieces where it can be; null to leave them whole. [min], above zero</summary>
    public int? LongestMachineMinutes { get; init; }

    /// <summary>The same for all other tasks. [min], above zero</summary>
    public int? LongestMinutes { get; init; }

    /// <summary>The maker's own paces.</summary>
    public ShopPaces Paces { get; init; } = ShopPaces.Usual;
}
