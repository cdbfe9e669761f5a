using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>Whether every size in a plan is one that a workshop can have, so that nothing worked out from it runs out of range.</summary>
internal sealed class PlanSizes(Findings findings)
{
    private static readonly Length Longest = Length.FromMillimetres(100_000);
    private static readonly Length Widest = Length.FromMillimetres(2_000);
    private static readonly Length Thickest = Length.FromMillimetres(500);

    /// <summary>Looks at the whole plan but its request.</summary>
    public void Check(Plan plan)
    {
        foreach (var glueUp in plan.GlueUps)
        {
            GlueUp(glueUp);
        }

        foreach (var faced in plan.Faced)
        {
            var at = $"board {faced.Label}";
            Positive(at + " upper thickness", faced.UpperThickness, Thickest);
            Positive(at + " lower thickness", faced.LowerThickness, Thickest);
            Positive(at + " length", faced.Length, Longest);
            Positive(at + " width", faced.Width, Widest);
            Positive(at + " thickness", faced.Thickness, Thickest);
        }

        foreach (var board in plan.Boards)
        {
            var at = $"board {board.Piece}";
            Cross(at, board.RoughWidth, board.Thickness);
            Within(at + " width", board.Width, Widest);
            Within(at + " length", board.Length, Longest);
        }

        foreach (var step in plan.Steps)
        {
            foreach (var work in step.Works)
            {
                Work($"step {step.Number}", work);
            }
        }

        foreach (var leftover in plan.Leftovers)
        {
            Piece("leftover", leftover.Piece);
        }

        foreach (var rod in plan.Rods)
        {
            Within($"rod {rod.Id} diameter", rod.Diameter, Thickest);
            Within($"rod {rod.Id} length", rod.Length, Longest);
            Within($"rod {rod.Id} left", rod.Left, Longest);
        }
    }

    private void GlueUp(GlueUp glueUp)
    {
        var at = $"glue-up {glueUp.Id}";
        findings.Require(glueUp.Blanks is >= 1 and <= 1_000, at + " blanks", glueUp.Blanks, "1 to 1000");
        findings.Require(glueUp.Layers is >= 1 and <= 100, at + " layers", glueUp.Layers, "1 to 100");
        Within(at + " overlap", glueUp.Overlap, Longest);
        Within(at + " rough width", glueUp.RoughWidth, Longest);
        Within(at + " target width", glueUp.TargetWidth, Longest);
        findings.Require(!glueUp.Strips.IsEmpty, at, "no strips", "one or more");
        foreach (var strip in glueUp.Strips)
        {
            Cross($"{at} strip {strip.Piece}", strip.RoughWidth, strip.Thickness);
            Within($"{at} strip {strip.Piece} width", strip.Width, Widest);
            Within($"{at} strip {strip.Piece} length", strip.Length, Longest);
        }

        foreach (var ladder in (ReadOnlySpan<Ladder>)[glueUp.ThicknessLadder, glueUp.WidthLadder])
        {
            Within(at + " ladder", ladder.Start, Longest);
            foreach (var rung in ladder.Rungs)
            {
                Within($"{at} ladder {rung.Operation} after", rung.After, Longest);
            }
        }
    }

    private void Work(string at, Work work)
    {
        Within(at + " taken", work.Taken, Longest);
        Within(at + " taken first", work.TakenFirst, Longest);
        Within(at + " kerf", work.Kerf, Longest);
        Within(at + " setting", work.Setting, Longest);
        findings.Require(work.Cuts is >= 0 and <= 10_000, at + " cuts", work.Cuts, "0 to 10000");
        foreach (var piece in work.Out)
        {
            Piece(at, piece);
        }
    }

    private void Piece(string at, Piece piece)
    {
        var name = $"{at} piece {piece.Id}";
        Positive(name + " length", piece.Length, Longest);
        Positive(name + " width", piece.Width, Widest);
        Positive(name + " thickness", piece.Thickness, Thickest);
        foreach (var lane in piece.Lanes)
        {
            Positive($"{name} lane of {lane.Offcut}", lane.Width, Widest);
        }
    }

    private void Cross(string at, Length width, Length thickness)
    {
        Within(at + " rough width", width, Widest);
        Within(at + " thickness", thickness, Thickest);
    }

    private void Within(string at, Length size, Length most) =>
        findings.Require(size >= Length.Zero && size <= most, at, size, $"0 to {most}");

    private void Positive(string at, Length size, Length most) =>
        findings.Require(size > Length.Zero && size <= most, at, size, $"above 0 to {most}");
}
