using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans.Chances;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>
/// How likely panels and gifts meet size, worked out once more from the works as they were replayed: what is stated must be right, and every gift that is made must
/// reach the chance the shop asks for. What is glued or cut already can be given no more wood, so it is left out of what is asked.
/// </summary>
internal sealed class ChanceCheck(Facts facts, Findings findings)
{
    /// <summary>Two ways of working it out part by less, in thousandths.</summary>
    private const int RoundingPerMille = 5;

    private readonly List<(Func<string, bool> IsFor, bool IsDone, List<Condition> Conditions)> noted = [];
    private readonly List<(GlueUp GlueUp, List<Condition> Conditions)> panels = [];
    private int ownWork = int.MinValue;

    private Allowances Takes => facts.Shop.Allowances;

    /// <summary>Takes down what a glue-up's layers must still measure.</summary>
    public void Note(GlueUp glueUp, LivePiece[] strips)
    {
        if (facts.FindPart(glueUp.Gift, glueUp.Part) is not { } part || glueUp.Layers < 1)
        {
            return;
        }

        var conditions = new List<Condition>();
        var rough = Length.Sum(strips.Select(s => s.Piece.Width));
        var blanks = (part.Length * glueUp.Blanks) + (facts.Shop.TableSaw.Kerf * (glueUp.Blanks - 1));
        for (var layer = 0; layer < glueUp.Layers; layer++)
        {
            var width = new Condition(rough - Takes.WidthTrim.Mean - part.Width).With(ownWork++, Takes.WidthTrim.Spread.Millimetres);
            conditions.Add(strips.Aggregate(width, (c, s) => c.With(s.EdgeWorks)));
            conditions.Add(Ends(strips.Min(s => s.Piece.Length) - blanks));
        }

        conditions.AddRange(Thickness(glueUp.Layers, strips, part.Thickness + (Takes.Sand.Mean * 2)));
        panels.Add((glueUp, conditions));
        noted.Add((glueUp.IsFor, facts.Plan.Request.Choices.Glued.Any(d => d.Is(glueUp)), conditions));
    }

    /// <summary>Takes down what the strip of a run must still measure.</summary>
    public void Note(BoardRun board, LivePiece strip)
    {
        if (facts.FindRun(board.Gift, board.Run) is not { Members: [var first, ..] members } || facts.FindPart(board.Gift, first.Part) is not { } part)
        {
            return;
        }

        var lengths = Length.Sum(members.Select(m => facts.FindPart(board.Gift, m.Part)?.Length ?? default)) + (facts.Shop.TableSaw.Kerf * (members.Length - 1));
        noted.Add((gift => gift == board.Gift, facts.Plan.Request.Choices.Cut.Contains(board), [
            new Condition((strip.BeforeTrim ?? strip.Piece.Width) - part.Width).With(strip.EdgeWorks),
            new Condition((strip.BeforePlaning ?? strip.Piece.Thickness) - part.Thickness - (Takes.Sand.Mean * 2)).With(strip.FaceWorks),
            Ends(strip.Piece.Length - lengths),
        ]));
    }

    /// <summary>
    /// Compares what is stated and asked, of a plan in which nothing else is wrong: the sums are long, and mean nothing when a size is wrong. What is stated is defined
    /// to the thousandth, so it is compared with its definition too.
    /// </summary>
    public void Check()
    {
        if (!findings.AreNone)
        {
            return;
        }

        CheckDefinition();
        foreach (var (glueUp, conditions) in panels)
        {
            Compare($"glue-up {glueUp.Id} chance per mille", glueUp.ChancePerMille, ConditionSet.Chance(conditions));
        }

        foreach (var gift in facts.Plan.Made)
        {
            var mine = noted.Where(n => n.IsFor(gift.Gift)).ToList();
            var chance = ConditionSet.Chance(mine.SelectMany(n => n.Conditions));
            var where = $"gift {gift.Gift} chance per mille";
            if (findings.Require(gift.ChancePerMille is not null, where, "nothing", "how likely it meets size"))
            {
                Compare(where, gift.ChancePerMille ?? 0, chance);
            }

            var open = mine.Any(n => n.IsDone) ? ConditionSet.Chance(mine.Where(n => !n.IsDone).SelectMany(n => n.Conditions)) : chance;
            var asked = facts.Shop.ConfidencePercent * 10;
            findings.Require((open * 1000) + RoundingPerMille >= asked, where, open * 1000, $"at least the {asked} asked for");
        }
    }

    private void CheckDefinition()
    {
        var defined = PlanChances.Stated(facts.Plan, facts.Designs);
        foreach (var (found, expected) in facts.Plan.GlueUps.Zip(defined.GlueUps))
        {
            findings.Equal($"glue-up {found.Id} chance per mille", found.ChancePerMille, expected.ChancePerMille);
            findings.Equal($"glue-up {found.Id} width ladder spread", found.WidthLadder.Rungs[0].Spread, expected.WidthLadder.Rungs[0].Spread);
        }

        foreach (var (found, expected) in facts.Plan.Made.Zip(defined.Made))
        {
            findings.Equal($"gift {found.Gift} chance per mille", found.ChancePerMille, expected.ChancePerMille);
        }
    }

    private void Compare(string where, int stated, double share) =>
        findings.Require(Math.Abs(stated + 0.5 - (share * 1000)) <= RoundingPerMille, where, stated, (share * 1000));

    private IEnumerable<Condition> Thickness(int layers, LivePiece[] strips, Length planed)
    {
        int flattening = ownWork++, cleaning = ownWork++;
        var kerfs = facts.Shop.Bandsaw.Kerf * (layers - 1);
        Length Strip(LivePiece s) => s.BeforePlaning ?? s.Piece.Thickness;
        if (layers == 1)
        {
            return strips.Select(s => new Condition(Strip(s) - Takes.PanelFlatten.Mean - planed).With(s.FaceWorks).With(flattening, Takes.PanelFlatten.Spread.Millimetres));
        }

        // The fence stands where the plan says; the last layer has what the panel is over or under.
        var layer = (strips.Min(Strip) - Takes.PanelFlatten.Mean - kerfs).Divide(layers, Rounding.Down);
        var clean = Takes.ResawCleanUp;
        var last = strips.Select(s => new Condition(Strip(s) - Takes.PanelFlatten.Mean - kerfs - (layer * (layers - 1)) - clean.Mean - planed)
            .With(s.FaceWorks).With(flattening, Takes.PanelFlatten.Spread.Millimetres).With(cleaning, clean.Spread.Millimetres));
        return last.Concat(Enumerable.Range(1, layers - 1).Select(_ => new Condition(layer - clean.Mean - planed).With(ownWork++, clean.Spread.Millimetres))).ToList();
    }

    private Condition Ends(Length room) => new Condition(room - (Takes.EndTrim.Mean * 2))
        .With(ownWork++, Takes.EndTrim.Spread.Millimetres).With(ownWork++, Takes.EndTrim.Spread.Millimetres);
}
