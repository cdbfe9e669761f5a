using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Sheets;

/// <summary>The pieces of one step: what it is, what it measures now, what to set, what it should measure then, and room for what it does measure.</summary>
internal static class WorkTable
{
    internal static IReadOnlyList<Block> Blocks(PlanFacts facts, Step step, bool showSetting, double width)
    {
        // Ripping, the fence is set to each width in turn: the width itself is the number to set.
        var settings = showSetting && step.Operation is not (Operation.Rip or Operation.RoughRip) && step.Works.Any(w => w.Setting.IsPositive);
        var table = settings
            ? new Table(facts.Hatches, Table.Fit(width, 1, new Column("", 7), new("Piece", 30), new("Wood", 36), new("Now", 46),
                new(FirstLetter.Large(StationPages.SettingWord(step.Operation)), 28, true), new(Axis(step.Operation), 26, true), new("Reading", 24)))
            : new Table(facts.Hatches, Table.Fit(width, 1, new Column("", 7), new("Piece", 40), new("Wood", 38), new("Now", 50),
                new(Axis(step.Operation), 30, true), new("Reading", 26)));
        foreach (var work in step.Works) Rows(facts, step, work, table, settings);
        return table.Blocks();
    }

    private static void Rows(PlanFacts facts, Step step, Work work, Table table, bool settings)
    {
        var note = PlanWords.Of(work.Workaround);
        var now = work.In.Length == 1 ? facts.Before(step, work.In[0]) : null;
        var nowText = now is null ? "" : facts.Sizes.Box(now.Length, now.Width, now.Thickness);
        if (step.Operation == Operation.TrimWidth && work.TakenFirst.IsPositive) nowText += $"; lower edge first: {facts.Sizes.Of(work.TakenFirst)} off";
        var cuts = work.Out.Length != 1 || work.In.Length != 1 || work.Out[0].Id != work.In[0];
        if (!cuts)
        {
            table.Row(Row(facts, step, work, work.Out[0], work.In[0], Cell.Tick, nowText, settings), 8.4, note);
            return;
        }

        table.Row(
            settings
                ? [Cell.Tick, new(string.Join(" + ", work.In), 12, true), Swatch(facts, now), new(nowText, 9), Setting(facts, work), Cell.None, Cell.None]
                : [Cell.Tick, new(string.Join(" + ", work.In), 12, true), Swatch(facts, now), new(nowText, 9), Cell.None, Cell.None],
            7, note, rule: false, withNext: true);
        for (var i = 0; i < work.Out.Length; i++)
            table.Row(OutRow(facts, step, work.Out[i], settings, StripWords.Start(facts.Index, step, work.Out[i], facts.Sizes.Of)), 7.2, rule: i == work.Out.Length - 1);
    }

    private static System.Collections.Immutable.ImmutableArray<Cell> Row(
        PlanFacts facts, Step step, Work work, Piece piece, string name, Cell tick, string now, bool settings)
    {
        var size = SizeOf(step.Operation, piece);
        var to = size is { } length ? facts.Sizes.Of(length) : "";
        var id = new Cell(name, 12, true);
        var wood = Swatch(facts, piece);
        return settings
            ? [tick, id, wood, new(now, 9), Setting(facts, work), new(to, 11), Cell.Pencil]
            : [tick, id, wood, new(now, 9), new(to, 15, true), Cell.Pencil];
    }

    private static Cell Setting(PlanFacts facts, Work work) => new(work.Setting.IsPositive ? facts.Sizes.Of(work.Setting) : "", 15, true);

    // What comes off the saw: name and size; its wood and the setting stand in the line of the piece that is cut.
    private static System.Collections.Immutable.ImmutableArray<Cell> OutRow(PlanFacts facts, Step step, Piece piece, bool settings, string start)
    {
        var size = new Cell(SizeOf(step.Operation, piece) is { } length ? facts.Sizes.Of(length) : "", 13, true);
        var name = new Cell($"–{Typesetting.Tie}{piece.Id}", 11, true);
        return settings
            ? [Cell.None, name, Cell.None, new(start, 9), Cell.None, size, Cell.Pencil]
            : [Cell.None, name, Cell.None, new(start, 9), size, Cell.Pencil];
    }

    private static Cell Swatch(PlanFacts facts, Piece? piece) => facts.Species(piece) switch
    {
        [var only] => new(only, 9, Kind: CellKind.Swatch),
        [] => Cell.None,
        _ => new(facts.Wood(piece), 8),
    };

    private static Length? SizeOf(Operation operation, Piece piece) => operation switch
    {
        Operation.FaceGlue or Operation.FaceJoint or Operation.FacePlane or Operation.PlaneToThickness or Operation.FlattenPanel or Operation.Resaw or Operation.ResawStrips or Operation.CleanSawnFaces
            or Operation.PlanePanel or Operation.Sand => piece.Thickness,
        Operation.EdgeJoint or Operation.Rip or Operation.RoughRip or Operation.TrimWidth => piece.Width,
        Operation.RoughCrosscut or Operation.CrosscutStrips or Operation.CrosscutBlanks or Operation.CutRods => piece.Length,
        _ => null,
    };

    private static string Axis(Operation operation) => operation switch
    {
        Operation.Rip or Operation.RoughRip => "Fence = width",
        Operation.EdgeJoint or Operation.TrimWidth => "Width then",
        Operation.RoughCrosscut or Operation.CrosscutStrips or Operation.CrosscutBlanks or Operation.CutRods => "Length then",
        Operation.GlueUp or Operation.Drill or Operation.CutLaps or Operation.CutMitres or Operation.TreatEdges or Operation.DryFit
            or Operation.Assemble or Operation.Finish => "",
        _ => "Thickness then",
    };
}
