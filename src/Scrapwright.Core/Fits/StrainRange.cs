namespace Scrapwright.Core.Fits;

/// <summary>Change of a size over the size, least and most; both are equal where the growth rings are known. <c>default</c> is no change.</summary>
internal readonly record struct StrainRange(double Low, double High)
{
    internal static StrainRange Only(double strain) => new(strain, strain);

    internal static StrainRange Between(double one, double other) => new(Math.Min(one, other), Math.Max(one, other));
}
