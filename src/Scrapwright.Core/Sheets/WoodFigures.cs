using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Sheets;

/// <summary>The numbers of a wood in the maker's unit, in the order that screens and the command line show them.</summary>
public static class WoodFigures
{
    // By definition: a foot is 0.3048 m.
    private const double KgPerM3PerPoundPerFoot3 = CustomaryUnits.KilogramsPerPound / (0.3048 * 0.3048 * 0.3048);

    /// <summary>Width of the board whose movement is given: 4 in or 100 mm. Our own choice.</summary>
    public static Length Board(LengthUnit unit) => unit == LengthUnit.Inch ? Length.FromInches(4) : Length.FromMillimetres(100);

    /// <summary>What the movement is of, as a line: <c>A board 4 in wide, from 6 % to 12 % water</c>.</summary>
    public static string BoardInWords(LengthUnit unit) =>
        $"A board {(unit == LengthUnit.Inch ? "4 in" : "100 mm")} wide, from {WoodFacts.DryPercent:0} % to {WoodFacts.DampPercent:0} % water";

    /// <summary>Movement flat-sawn and quarter-sawn, hardness, density.</summary>
    /// <param name="species">The wood.</param>
    /// <param name="unit">The maker's unit of length; inches bring pounds.</param>
    public static ImmutableArray<WoodFigure> Of(Species species, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(species);
        var isInch = unit == LengthUnit.Inch;
        return
        [
            Movement("Moves, flat-sawn", species, RingOrientation.Flat, unit),
            Movement("Moves, quarter-sawn", species, RingOrientation.Quarter, unit),
            // Published in pounds to about ten of them: newtons beyond ten would pretend to know more.
            new("Hardness", isInch ? species.SideHardnessLbf : Tens(species.SideHardnessLbf * CustomaryUnits.NewtonsPerPoundForce), isInch ? "lbf" : "N", 0),
            isInch
                ? new("Density", species.DensityKgPerM3 / KgPerM3PerPoundPerFoot3, "lb/ft³", 0)
                : new("Density", Tens(species.DensityKgPerM3), "kg/m³", 0),
        ];
    }

    private static WoodFigure Movement(string title, Species species, RingOrientation rings, LengthUnit unit)
    {
        var change = MoistureMovement.WidthChange(species, rings, Board(unit), WoodFacts.DryPercent, WoodFacts.DampPercent)?.Change;
        return unit == LengthUnit.Inch
            ? new(title, change?.Inches, "in", 3, change)
            : new(title, change?.Millimetres, "mm", 1, change);
    }

    private static double? Tens(double? value) => value is { } number ? Math.Round(number / 10, MidpointRounding.AwayFromZero) * 10 : null;
}
