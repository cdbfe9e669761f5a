namespace Scrapwright.Core.Plans.Audit;

/// <summary>The levels of the objective: all there, in order, with right values and bounds on the right side.</summary>
internal sealed class LevelCheck(Facts facts, Findings findings)
{
    /// <summary>Looks at all levels.</summary>
    public void Check()
    {
        var levels = facts.Plan.Levels;
        if (!findings.Same("levels", levels.Select(l => l.Kind), Enum.GetValues<LevelKind>()))
        {
            return;
        }

        var scores = PlanScores.Of(facts.Plan.Request, facts.Designs, facts.Plan.Made, facts.Plan.GlueUps, facts.Plan.Boards);
        foreach (var level in levels)
        {
            findings.Equal($"level {level.Kind} value", level.Value, scores.ValueOf(level.Kind));
            var isRight = level.Maximise ? level.Bound >= level.Value : level.Bound <= level.Value;
            findings.Require(isRight, $"level {level.Kind} bound", level.Bound, $"{(level.Maximise ? "at least" : "at most")} {level.Value}");
            findings.Require(level.Bound >= 0 || level.Kind == LevelKind.Looks, $"level {level.Kind} bound", level.Bound, "0 or more");
        }
    }
}
