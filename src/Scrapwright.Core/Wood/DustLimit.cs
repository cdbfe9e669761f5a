using System.Globalization;

namespace Scrapwright.Core.Wood;

/// <summary>One published limit of wood dust in the air of a workplace, as a mean over eight hours. Limits bind employers; for a hobby they are good practice.</summary>
public sealed record DustLimit
{
    /// <summary>Stable name.</summary>
    public required string Key { get; init; }

    /// <summary>Who sets it, and where.</summary>
    public required string Body { get; init; }

    /// <summary>The limit. [mg/m³]</summary>
    public required double LimitMgPerM3 { get; init; }

    /// <summary>Which part of the dust it counts.</summary>
    public required DustFraction Fraction { get; init; }

    /// <summary>Whose dust.</summary>
    public required DustWood Wood { get; init; }

    /// <summary>True when employers must keep it, false when it is recommended.</summary>
    public required bool IsBinding { get; init; }

    /// <summary>Since when, or null where the source does not say.</summary>
    public DateOnly? InForceSince { get; init; }

    /// <summary>What else is to be known of it.</summary>
    public required string Note { get; init; }

    /// <summary>Where it comes from.</summary>
    public required ValueSource Source { get; init; }

    /// <summary>The limit in one line: <c>3 mg/m³ inhalable dust, hardwood: Great Britain, HSE, since 2020-01-17</c>.</summary>
    public string InWords
    {
        get
        {
            string wood = Wood switch
            {
                DustWood.Hardwood => "hardwood",
                DustWood.Softwood => "softwood",
                DustWood.WesternRedcedar => "western red cedar",
                DustWood.OtherThanWesternRedcedar => "wood other than western red cedar",
                _ => "any wood",
            };
            string since = InForceSince is { } date ? string.Create(CultureInfo.InvariantCulture, $", since {date:yyyy-MM-dd}") : "";
            return string.Create(CultureInfo.InvariantCulture, $"{LimitMgPerM3} mg/m³ {Fraction.ToString().ToLowerInvariant()} dust, {wood}: {Body}{since}{(IsBinding ? "" : ", recommended")}");
        }
    }

    /// <summary>Whether the limit is for the dust of a species.</summary>
    /// <param name="species">The wood.</param>
    public bool AppliesTo(Species species)
    {
        ArgumentNullException.ThrowIfNull(species);
        bool isWesternRedcedar = species.Key == DustLimits.WesternRedcedarKey;
        return Wood switch
        {
            DustWood.Hardwood => species.IsHardwood,
            DustWood.Softwood => !species.IsHardwood,
            DustWood.WesternRedcedar => isWesternRedcedar,
            DustWood.OtherThanWesternRedcedar => !isWesternRedcedar,
            _ => true,
        };
    }
}
