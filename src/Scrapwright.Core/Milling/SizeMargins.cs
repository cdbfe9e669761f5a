using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Milling;

/// <summary>How many standard deviations are held in hand over what a size needs, in each direction.</summary>
public sealed record SizeMargins
{
    /// <summary>Nothing in hand: as likely short as over.</summary>
    public static SizeMargins None { get; } = new();

    /// <summary>For the width of each layer.</summary>
    public double Width { get; init; }

    /// <summary>For the thickness of each strip in each layer.</summary>
    public double Thickness { get; init; }

    /// <summary>For the squaring of both ends together.</summary>
    public double Length { get; init; }

    /// <summary>Length held in hand for the squaring of both ends, rounded up to a mark of the rule.</summary>
    public Measures.Length ForEnds(Shop shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        return ReadableSize.Up(Chance.Margin(shop.Allowances.EndTrim.Spread, Math.Sqrt(2) * Length), shop.Unit);
    }

    /// <summary>In each direction the larger of two: what serves two gifts must suffice for both.</summary>
    public SizeMargins Or(SizeMargins other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return new SizeMargins { Width = Math.Max(Width, other.Width), Thickness = Math.Max(Thickness, other.Thickness), Length = Math.Max(Length, other.Length) };
    }

    /// <summary>The same in every direction.</summary>
    /// <param name="percent">Chance of each size alone, 50 to 99 [%].</param>
    public static SizeMargins Each(int percent)
    {
        var deviations = Chance.Deviations(percent);
        return new SizeMargins { Width = deviations, Thickness = deviations, Length = deviations };
    }
}
