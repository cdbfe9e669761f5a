using System.Globalization;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Fits;

/// <summary>What a gift weighs, for posting. About: wood of one species differs by a tenth, and glue, finish, rounded edges and mitres are left out.</summary>
public sealed record GiftWeight
{
    /// <summary>Label of the gift.</summary>
    public required string Gift { get; init; }

    /// <summary>Mass at the mean moisture of the recipient's year. [g], rounded up to 5 g.</summary>
    public required int Grams { get; init; }

    /// <summary>The moisture content it is told at. [%]</summary>
    public required double MoisturePercent { get; init; }

    /// <summary>In ounces, from the grams as told. [oz], rounded up to a whole ounce.</summary>
    public int Ounces => (int)decimal.Ceiling(Grams / (decimal)CustomaryUnits.GramsPerOunce);

    /// <summary>For reading: <c>about 415 g</c>, <c>about 15 oz</c>, <c>about 2 lb 3 oz</c>, in the maker's unit.</summary>
    public string InWords(Shop shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        if (shop.Unit != LengthUnit.Inch) return Grams < 1000 ? $"about {Grams} g" : $"about {(Grams / 1000m).ToString("0.0##", CultureInfo.InvariantCulture)} kg";
        var (pounds, ounces) = Math.DivRem(Ounces, CustomaryUnits.OuncesPerPound);
        return (pounds, ounces) switch
        {
            (0, _) => $"about {ounces} oz",
            (_, 0) => $"about {pounds} lb",
            _ => $"about {pounds} lb {ounces} oz",
        };
    }
}
