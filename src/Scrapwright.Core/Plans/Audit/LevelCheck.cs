using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>The levels of the objective: all there, in order, with right values and bounds on the right side.</summary>
internal sealed class LevelCheck(Facts facts, Findings findings)
{
    /// <summary>Looks at all levels.</summary>
    public void Check()
    {
        var levels = facts.Plan.Levels;
        var before = facts.Plan.Before;
        if (!findings.Same("levels", levels.Select(l => l.Kind), Enum.GetValues<LevelKind>().Where(k => k != LevelKind.StripsAsBefore || !before.IsEmpty)))
        {
            return;
        }

        var scores = PlanScores.Of(facts.Plan.Request, facts.Designs, facts.Plan.Made, facts.Plan.GlueUps, facts.Plan.Boards, facts.Plan.Faced);
        foreach (var level in levels)
        {
            findings.Equal($"level {level.Kind} value", level.Value, level.Kind == LevelKind.StripsAsBefore ? Kept(before) : scores.ValueOf(level.Kind));
            var isRight = level.Maximise ? level.Bound >= level.Value : level.Bound <= level.Value;
            findings.Require(isRight, $"level {level.Kind} bound", level.Bound, $"{(level.Maximise ? "at least" : "at most")} {level.Value}");
            findings.Require(level.Bound >= 0 || level.Kind == LevelKind.Looks, $"level {level.Kind} bound", level.Bound, "0 or more");
        }
    }

    /// <summary>Takes each strip of the plan off the list of those there were.</summary>
    private long Kept(ImmutableArray<FormerStrip> before)
    {
        var open = new Dictionary<(string, string, string, Length), long>();
        foreach (var strip in before)
        {
            var key = (strip.Gift, strip.Part, strip.Offcut, strip.RoughWidth);
            open[key] = open.GetValueOrDefault(key) + strip.Count;
        }

        long kept = 0;
        foreach (var glueUp in facts.Plan.GlueUps)
        {
            foreach (var strip in glueUp.Strips)
            {
                Take((glueUp.Gift, glueUp.Part, strip.Offcut, strip.RoughWidth));
            }
        }

        foreach (var board in facts.Plan.Boards)
        {
            Take((board.Gift, "", board.Offcut, board.RoughWidth));
        }

        return kept;

        void Take((string, string, string, Length) key)
        {
            if (open.GetValueOrDefault(key) > 0)
            {
                open[key]--;
                kept++;
            }
        }
    }
}
