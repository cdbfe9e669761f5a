using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Fits;

/// <summary>A fit through the year: how much clearance is left in each month where it lives, and which openings would do.</summary>
public sealed record SeasonFit
{
    /// <summary>The opening when fitted.</summary>
    public required Length Opening { get; init; }

    /// <summary>What goes in, when fitted.</summary>
    public required Length Held { get; init; }

    /// <summary>Least clearance wanted in any month.</summary>
    public required Length Least { get; init; }

    /// <summary>Most clearance wanted in any month; null when it may be as loose as it likes.</summary>
    public Length? Most { get; init; }

    /// <summary>The air of the shop where it is fitted.</summary>
    public required Climate FittedIn { get; init; }

    /// <summary>The month it is fitted, 1 to 12.</summary>
    public required int FittedMonth { get; init; }

    /// <summary>True when nobody said when it is fitted: the driest month of the shop's year is taken, from which wood swells most.</summary>
    public required bool FittedMonthIsAssumed { get; init; }

    /// <summary>Moisture content of all the wood when fitted. [%]</summary>
    public required double FittedMoisturePercent { get; init; }

    /// <summary>The air where it lives.</summary>
    public required Climate LivesIn { get; init; }

    /// <summary>January to December.</summary>
    public required ImmutableArray<FitMonth> Months { get; init; }

    /// <summary>The smallest opening, when fitted, that leaves the least clearance in every month; a picometre less does not.</summary>
    public required Length SmallestOpening { get; init; }

    /// <summary>The largest opening, when fitted, that passes the most clearance in no month; a picometre more does. Null when there is no most.</summary>
    public Length? LargestOpening { get; init; }

    /// <summary>Whether it holds.</summary>
    public required FitVerdict Verdict { get; init; }

    /// <summary>The option to set and its value; null when it holds, or no option sets it.</summary>
    public FitSetting? Setting { get; init; }

    /// <summary>What had to be assumed, in sentences.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];

    /// <summary>The tightest month.</summary>
    public FitMonth Tightest => Months.MinBy(m => m.Clearance)!;

    /// <summary>The loosest month.</summary>
    public FitMonth Loosest => Months.MaxBy(m => m.MostClearance)!;

    /// <summary>Works a fit out without a plan.</summary>
    /// <param name="trial">The fit.</param>
    /// <exception cref="ArgumentException">Nothing holds, nothing is held, or a species is not in the table.</exception>
    public static SeasonFit Between(FitTrial trial)
    {
        ArgumentNullException.ThrowIfNull(trial);
        ArgumentNullException.ThrowIfNull(trial.FittedIn);
        ArgumentNullException.ThrowIfNull(trial.LivesIn);
        if (trial.Holder.IsDefaultOrEmpty || trial.Held.IsDefaultOrEmpty) throw new ArgumentException("A fit has an opening and something that goes into it.", nameof(trial));
        foreach (var wood in trial.Holder.Concat(trial.Held)) WoodStrain.RequireSpecies(wood.Species, nameof(trial));
        var sides = new FitSides(Terms(trial.Holder, turns: false), Terms(trial.Held, trial.HeldTurns));
        return new FitYear(sides, new(trial.FittedIn), trial.FittedMonth, new(trial.LivesIn), trial.Least, trial.Most).Work(null);
    }

    // Stretches in one direction after each other are strips of one panel: each its own term, since their sizes are told one by one.
    private static ImmutableArray<MovingTerm> Terms(ImmutableArray<MovingWood> woods, bool turns) =>
    [
        .. woods.Select(w => new MovingTerm(w.Size, 1, turns ? [new(w.Direction, [w]), MovingBody.Still] : [new(w.Direction, [w])], Repeats: turns)),
    ];
}
