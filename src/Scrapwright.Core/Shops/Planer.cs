using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Shops;

/// <summary>Limits of the thickness planer. The machine's manual comes before these figures.</summary>
public sealed record Planer
{
    /// <summary>Widest piece it takes.</summary>
    public Length MaximumWidth { get; init; } = Length.FromInches(13);

    /// <summary>Shortest piece it may meet: the distance between its rollers and some more.</summary>
    public Length MinimumLength { get; init; } = Length.FromInches(12);

    /// <summary>Thinnest piece it may leave without a carrier board.</summary>
    public Length MinimumThickness { get; init; } = Length.FromInches(1, 4);

    /// <summary>Thickest piece it takes.</summary>
    public Length MaximumThickness { get; init; } = Length.FromInches(6);
}
