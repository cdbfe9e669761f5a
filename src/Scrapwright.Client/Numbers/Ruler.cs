using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Client.Numbers;

/// <summary>How this shop reads sizes: its unit, and the finest fraction of an inch or decimal of a millimetre.</summary>
/// <param name="Unit">Inch or millimetre.</param>
/// <param name="Denominator">Finest fraction of an inch: 2 to 64.</param>
public sealed record Ruler(LengthUnit Unit, int Denominator)
{
    /// <summary>What a screen shows before the shop is known.</summary>
    public static Ruler Default { get; } = new(LengthUnit.Inch, 32);

    /// <summary>The ruler of a shop.</summary>
    public static Ruler Of(Shop shop) => new(shop.Unit, shop.Denominator);

    /// <summary>Its finest mark: a fraction of an inch, or a tenth of a millimetre.</summary>
    public Length FinestMark => Style.FinestMark;

    /// <summary>Style for sizes to the nearest mark of the ruler; inexact ones are not marked.</summary>
    public LengthStyle Style => new() { Unit = Unit, Denominator = Denominator, Approximate = false };

    /// <summary>A size with its unit, to the nearest mark: <c>14 3/8 in</c>.</summary>
    public string Text(Length size) => size.ToText(Style);

    /// <summary>A size exactly, as a field takes it: <c>14 3/8 in</c>.</summary>
    public string Exact(Length size) => size.ToExactText(Unit);

    /// <summary>Short name of the unit.</summary>
    public string UnitMark => Unit == LengthUnit.Inch ? "in" : "mm";
}
