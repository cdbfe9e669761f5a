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

    internal LengthStyle Style => style;

    internal string UnitWord => Unit == LengthUnit.Inch ? "in" : "mm";

    /// <summary>A number to set or check, with its unit; ≈ where the rule has no such mark.</summary>
    /// <remarks>A clearance finer than the rule's first mark would read as nothing, so it is shown in millimetres.</remarks>
    internal string Of(Length length) =>
        Tied(LengthFormatter.Format(length, length.IsPositive && IsBelowTheFirstMark(length) ? LengthStyle.Millimetres with { Decimals = 2 } : style));

    /// <summary>A size to recognise something by, with its unit, to the nearest mark.</summary>
    internal string About(Length length) => Tied(LengthFormatter.Format(length, plain));

    /// <summary>As <see cref="About"/> without the unit.</summary>
    internal string Number(Length length) => Tied(LengthFormatter.FormatNumber(length, plain));

    /// <summary>Length × width × thickness with the unit once.</summary>
    internal string Box(Length length, Length width, Length thickness) =>
        $"{Number(length)}{Typesetting.Tie}× {Number(width)}{Typesetting.Tie}× {About(thickness)}";

    private bool IsBelowTheFirstMark(Length length) =>
        length * 2 < style.FinestMark;

    private static string Tied(string text) => text.Replace(' ', Typesetting.Tie);
}
