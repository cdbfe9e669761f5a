using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Sheets;

/// <summary>Lengths as this shop reads them: its unit, its finest fraction, on one line.</summary>
internal sealed class Sizes
{
    private readonly LengthStyle style;
    private readonly LengthStyle plain;

    internal Sizes(Shop shop)
    {
        style = new LengthStyle { Unit = shop.Unit, Denominator = shop.Denominator };
        plain = style with { Approximate = false };
        Unit = shop.Unit;
    }

    internal LengthUnit Unit { get; }

    internal string UnitWord => Unit == LengthUnit.Inch ? "in" : "mm";

    /// <summary>A number to set or check, with its unit; ≈ where the rule has no such mark.</summary>
    internal string Of(Length length) => Tied(LengthFormatter.Format(length, style));

    /// <summary>A size to recognise something by, with its unit, to the nearest mark.</summary>
    internal string About(Length length) => Tied(LengthFormatter.Format(length, plain));

    /// <summary>As <see cref="About"/> without the unit.</summary>
    internal string Number(Length length) => Tied(LengthFormatter.FormatNumber(length, plain));

    /// <summary>Length × width × thickness with the unit once.</summary>
    internal string Box(Length length, Length width, Length thickness) =>
        $"{Number(length)}{Typesetting.Tie}× {Number(width)}{Typesetting.Tie}× {About(thickness)}";

    private static string Tied(string text) => text.Replace(' ', Typesetting.Tie);
}
