using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Shops;

/// <summary>Limits of the jointer. The machine's manual comes before these figures.</summary>
public sealed record Jointer
{
    /// <summary>Widest face it can flatten.</summary>
    public Length MaximumWidth { get; init; } = Length.FromInches(6);

    /// <summary>Shortest piece it may meet.</summary>
    public Length MinimumLength { get; init; } = Length.FromInches(12);

    /// <summary>Thinnest piece it may meet when face jointing.</summary>
    public Length MinimumThickness { get; init; } = Length.FromInches(1, 2);

    /// <summary>Narrowest piece it may meet.</summary>
    public Length MinimumWidth { get; init; } = Length.FromInches(3, 4);
}
