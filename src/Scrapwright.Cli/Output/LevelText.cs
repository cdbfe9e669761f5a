using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;

namespace Scrapwright.Cli.Output;

/// <summary>A level of the objective in words: how good the plan is, and how good any plan could be.</summary>
internal static class LevelText
{
    private const double CubicMillimetresPerBoardFoot = 144 * 25.4 * 25.4 * 25.4;

    internal static string Title(LevelKind kind) => kind switch
    {
        LevelKind.GiftsMade => "Gifts made",
        LevelKind.Looks => "Looks",
        LevelKind.WoodUsed => "Wood used",
        LevelKind.ClampLoads => "Clamp loads",
        LevelKind.StripsAsBefore => "Strips as before",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "A level of another kind."),
    };

    /// <summary>The figure: gifts as a count of gifts, not as the weights that the search adds up.</summary>
    internal static string Figure(Level level, Plan plan) => level.Kind switch
    {
        LevelKind.GiftsMade => $"{plan.Made.Length} of {plan.Made.Length + plan.Unmade.Length}",
        LevelKind.WoodUsed => Wood(level.Value, plan),
        LevelKind.StripsAsBefore => $"{level.Value} of {plan.Before.Sum(s => s.Count)}",
        LevelKind.Looks => $"{level.Value} {(level.Value == 1 ? "point" : "points")}",
        _ => $"{level.Value}",
    };

    /// <summary>How good that is.</summary>
    internal static string Verdict(Level level, Plan plan)
    {
        if (level.IsProven) return level.Maximise ? "the most there can be" : "the least there can be";
        if (!level.Maximise && level.Bound <= 0) return "no bound was found in the time given";
        return level.Kind switch
        {
            LevelKind.GiftsMade => $"not proven to be the most; weighted by priority, gap {Percent(level)}",
            LevelKind.Looks or LevelKind.StripsAsBefore => $"at most {level.Bound} can be had, gap {Percent(level)}",
            LevelKind.WoodUsed => $"at least {Wood(level.Bound, plan)} is needed, gap {Percent(level)}",
            _ => $"at least {level.Bound} needed, gap {Percent(level)}",
        };
    }

    private static string Percent(Level level) => $"{level.GapPerMille / 10.0:0.0} %";

    private static string Wood(long cubicMillimetres, Plan plan) => plan.Request.Shop.Unit == LengthUnit.Inch
        ? $"{cubicMillimetres / CubicMillimetresPerBoardFoot:0.00} board feet"
        : $"{cubicMillimetres / 1e6:0.00} litres";
}
