namespace Scrapwright.Core.Wood;

/// <summary>The source of every value of a species. A pair printed in one table row shares a source; null where the value is missing.</summary>
public sealed record SpeciesSources
{
    /// <summary>Source of <see cref="Species.ScientificName"/>.</summary>
    public required ValueSource ScientificName { get; init; }

    /// <summary>Source of <see cref="Species.SpecificGravity12"/>, and so of the density.</summary>
    public required ValueSource SpecificGravity { get; init; }

    /// <summary>Source of the radial and tangential shrinkage.</summary>
    public ValueSource? Shrinkage { get; init; }

    /// <summary>Source of the volumetric shrinkage.</summary>
    public ValueSource? VolumetricShrinkage { get; init; }

    /// <summary>Source of the radial and tangential dimensional change coefficients.</summary>
    public ValueSource? Coefficients { get; init; }

    /// <summary>Source of the side hardness.</summary>
    public ValueSource? SideHardness { get; init; }

    /// <summary>Source of the colour.</summary>
    public required ValueSource Colour { get; init; }
}
