using Scrapwright.Client.Numbers;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;

namespace Scrapwright.Client.Plans;

/// <summary>A level of the objective in words: how good the plan is, and how good any plan could be.</summary>
public static class LevelWords
{
    /// <summary>Short name.</summary>
    public static string Title(LevelKind kind) => kind switch
    {
        LevelKind.GiftsMade => "Gifts made",
        LevelKind.Looks => "Looks and variety",
        LevelKind.WoodUsed => "Wood used",
        LevelKind.ClampLoads => "Clamp loads",
        LevelKind.StripsAsBefore => "Strips as before",
        _ => kind.ToString(),
    };

    /// <summary>The figure of this level. Gifts count as gifts where the plan is known, not as weights.</summary>
    public static string Figure(Level level, Plan? plan, LengthUnit unit) => level.Kind switch
    {
        LevelKind.GiftsMade when plan is not null => $"{plan.Made.Length} of {plan.Made.Length + plan.Unmade.Length}",
        LevelKind.WoodUsed => Wood(level.Value, unit),
        LevelKind.StripsAsBefore when plan is not null => $"{level.Value} of {plan.Before.Sum(strip => strip.Count)}",
        _ => level.Value.ToString(),
    };

    /// <summary>How good that is.</summary>
    public static string Verdict(Level level, LengthUnit unit)
    {
        if (level.IsProven)
        {
            return level.Kind is LevelKind.WoodUsed or LevelKind.ClampLoads ? "proven least" : "proven best";
        }

        return level.Kind switch
        {
            LevelKind.WoodUsed when level.Bound == 0 => "how little would do is not known yet: search longer",
            LevelKind.WoodUsed => $"within {Percent(level)} of the best possible; at least {Wood(level.Bound, unit)} is needed",
            LevelKind.ClampLoads => level.Bound > 0 ? $"at least {level.Bound} needed" : "whether fewer would do is not known",
            LevelKind.Looks or LevelKind.StripsAsBefore => $"at most {level.Bound} possible",
            _ => $"within {Percent(level)} of the best possible",
        };
    }

    /// <summary>Share of the way to the bound, for a bar: 1 when proven.</summary>
    public static double Share(Level level) => 1 - (level.GapPerMille / 1000.0);

    private static string Percent(Level level) => $"{Math.Max(1, (level.GapPerMille + 9) / 10)} %";

    private static string Wood(long cubicMillimetres, LengthUnit unit) => unit == LengthUnit.Inch
        ? $"{cubicMillimetres / (144 * 25.4 * 25.4 * 25.4):0.00} bd ft"
        : $"{cubicMillimetres / 1e6:0.00} l";
}
