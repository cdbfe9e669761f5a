using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>Works every step once more, from the single offcuts on, and compares each number with the plan's.</summary>
internal sealed partial class Replay(Facts facts, Findings findings)
{
    private readonly HashSet<string> glued = new(StringComparer.Ordinal);
    private readonly HashSet<string> faced = new(StringComparer.Ordinal);
    private readonly HashSet<string> boarded = new(StringComparer.Ordinal);
    private int workIndex;

    /// <summary>How likely panels and gifts meet size.</summary>
    public ChanceCheck Chances { get; } = new(facts, findings);

    /// <summary>What there is after the last step.</summary>
    public Stock Stock { get; } = new(facts, findings);

    /// <summary>Works all steps.</summary>
    public void Run()
    {
        foreach (var step in facts.Plan.Steps)
        {
            var number = 0;
            foreach (var work in step.Works)
            {
                number++;
                Work(step, work, $"step {step.Number} {step.Operation}, work {number}");
                workIndex++;
            }
        }

        foreach (var glueUp in facts.Plan.GlueUps)
        {
            findings.Require(glued.Contains(glueUp.Id), $"glue-up {glueUp.Id}", "no step glues it", "one step");
        }

        foreach (var board in facts.Plan.Faced)
        {
            findings.Require(faced.Contains(board.Label), $"board {board.Label}", "no step glues it", "one step");
        }

        foreach (var board in facts.Plan.Boards)
        {
            findings.Require(boarded.Contains(board.Piece), $"board {board.Piece}", "no step cuts its parts", "one step");
        }
    }

    private Shop Shop => facts.Shop;

    private void Work(Step step, Work work, string where)
    {
        if (step.AssemblyIndex >= 0)
        {
            Assembly(step, work, where);
            return;
        }

        if (step.Operation == Operation.GlueUp)
        {
            Glue(step, work, where);
            return;
        }

        if (step.Operation == Operation.FaceGlue)
        {
            FaceGlue(work, where);
            return;
        }

        if (step.Operation is > Operation.CrosscutBlanks or < Operation.RoughCrosscut)
        {
            findings.Add(where, step.Operation, "an operation of milling, or the index of an assembly step");
            return;
        }

        if (!findings.Equal(where + " pieces going in", work.In.Length, 1)
            || !findings.Require(!work.Out.IsEmpty, where, "no piece comes out", "one or more")
            || Stock.FindAll(where, work.In) is not [var piece])
        {
            return;
        }

        switch (step.Operation)
        {
            case Operation.RoughCrosscut or Operation.CrosscutStrips or Operation.CrosscutBlanks:
                Crosscut(step.Operation, work, piece, where);
                break;
            case Operation.RoughRip or Operation.Rip:
                Rip(step.Operation, work, piece, where);
                break;
            case Operation.Resaw:
                Resaw(work, piece, where);
                break;
            case Operation.ResawStrips:
                ResawStrip(work, piece, where);
                break;
            default:
                if (findings.Equal(where + " pieces coming out", work.Out.Length, 1))
                {
                    Shape(step.Operation, work, piece, where);
                }

                break;
        }
    }

    /// <summary>Checks the way of working against the shop's limits.</summary>
    private void CheckWay(Operation operation, Work work, Length length, Length width, Length thickness, string where)
    {
        if (StationLimits.WayRound(operation, length, width, thickness, Shop) is { } way)
        {
            findings.Equal(where + " way of working", work.Workaround, way);
        }
        else
        {
            findings.Add(where, $"{length} × {width} × {thickness}", "a piece within the station's limits");
        }
    }

    private bool OffcutOf(LivePiece piece, string where, out Offcut offcut)
    {
        offcut = null!;
        if (piece.Panel is not null || piece.Piece.Lanes is not [var lane])
        {
            findings.Add(where, $"{piece.Piece.Id} is glued", "a piece of one offcut");
            return false;
        }

        return facts.OffcutByLabel.TryGetValue(lane.Offcut, out offcut!);
    }

    /// <summary>Compares a piece with what it must be.</summary>
    private void CheckPiece(string where, Piece found, Piece expected)
    {
        findings.Equal($"{where} piece {found.Id} name", found.Id, expected.Id);
        findings.Equal($"{where} piece {found.Id} length", found.Length, expected.Length);
        findings.Equal($"{where} piece {found.Id} width", found.Width, expected.Width);
        findings.Equal($"{where} piece {found.Id} thickness", found.Thickness, expected.Thickness);
        findings.Same($"{where} piece {found.Id} lanes", found.Lanes, expected.Lanes);
    }

    private bool HasDefect(LivePiece piece) => WoodFlaws.Touch(piece, facts);
}
