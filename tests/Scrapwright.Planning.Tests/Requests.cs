using System.Collections.Immutable;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;

namespace Scrapwright.Planning.Tests;

/// <summary>Small requests for tests; invented.</summary>
internal static class Requests
{
    internal static readonly PlanLimits Quick = new() { Seconds = 4, Deterministic = true };

    internal static Offcut Offcut(string label, string species, Length length, Length width, Length thickness) =>
        new() { Label = label, Species = species, Length = length, Width = width, Thickness = thickness };

    /// <summary>Sizes in sixteenths of an inch.</summary>
    internal static Offcut Offcut(string label, string species, int length, int width, int thickness) =>
        Offcut(label, species, Length.FromInches(length, 16), Length.FromInches(width, 16), Length.FromInches(thickness, 16));

    internal static Gift Squares(string label, params (string Key, string Value)[] options) => new()
    {
        Label = label,
        Design = "striped-squares",
        Options = options.ToImmutableSortedDictionary(o => o.Key, o => o.Value),
    };

    /// <summary>Three walnut and three maple strips, good for four squares.</summary>
    internal static PlanRequest FourSquares => new()
    {
        Workshop = "test shed",
        Pile =
        [
            Offcut("W1", "black-walnut", 18 * 16, 26, 14), Offcut("M1", "sugar-maple", 18 * 16, 26, 14),
            Offcut("W2", "black-walnut", 18 * 16, 26, 14), Offcut("M2", "sugar-maple", 18 * 16, 26, 14),
            Offcut("W3", "black-walnut", 19 * 16, 24, 15), Offcut("M3", "sugar-maple", 20 * 16, 24, 15),
        ],
        Gifts = [Squares("bench")],
    };

    /// <summary>Nine squares, which take more than one glue-up, and a stand with boards of its own; wood to spare.</summary>
    internal static PlanRequest TwoGifts => new()
    {
        Workshop = "test shed",
        Pile =
        [
            Offcut("W1", "black-walnut", 24 * 16, 26, 14), Offcut("M1", "sugar-maple", 24 * 16, 26, 14), Offcut("W2", "black-walnut", 18 * 16, 28, 14),
            Offcut("M2", "sugar-maple", 18 * 16, 30, 14), Offcut("W3", "black-walnut", 19 * 16, 24, 15), Offcut("M3", "sugar-maple", 20 * 16, 24, 15),
            Offcut("W4", "black-walnut", 22 * 16, 40, 15), Offcut("M4", "sugar-maple", 22 * 16, 40, 15), Offcut("C1", "black-cherry", 30 * 16, 48, 16), Offcut("C2", "black-cherry", 26 * 16, 44, 16),
        ],
        Gifts = [Squares("bench", ("count", "6")), new Gift { Label = "stand", Design = "u-stand" }],
    };

    internal static async Task<Plan> PlanOf(PlanRequest request, PlanLimits? limits = null) =>
        Assert.IsType<PlanOutcome.Planned>(await Planner.PlanAsync(request, limits ?? Quick)).Plan;

    internal static Level Level(Plan plan, LevelKind kind) => plan.Levels.Single(l => l.Kind == kind);
}
