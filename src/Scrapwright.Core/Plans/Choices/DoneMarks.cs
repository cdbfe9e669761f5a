namespace Scrapwright.Core.Plans.Choices;

/// <summary>Marks glue-ups of a plan as glued, boards as cut and strips as milled, and takes the marks off again.</summary>
public static class DoneMarks
{
    /// <summary>The plan's choices with a glue-up marked as glued.</summary>
    /// <exception cref="ArgumentException">The plan has no such glue-up.</exception>
    public static MakerChoices Glue(Plan plan, string glueUp)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Glue(plan, plan.Request.Choices, glueUp);
    }

    /// <summary>Choices, which may be later than the plan's, with a glue-up of the plan marked as glued.</summary>
    /// <exception cref="ArgumentException">The plan has no such glue-up.</exception>
    public static MakerChoices Glue(Plan plan, MakerChoices choices, string glueUp)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(choices);
        var done = plan.GlueUps.FirstOrDefault(g => g.Id == glueUp) ?? throw new ArgumentException($"The plan has no glue-up {glueUp}.", nameof(glueUp));
        return Milled(plan, choices with { Glued = [.. choices.Glued.Where(g => g.Id != glueUp), DoneGlueUp.Of(done)] });
    }

    /// <summary>The plan's choices with a board marked as cut.</summary>
    /// <exception cref="ArgumentException">The plan has no such board.</exception>
    public static MakerChoices Cut(Plan plan, string piece)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return Cut(plan, plan.Request.Choices, piece);
    }

    /// <summary>Choices, which may be later than the plan's, with a board of the plan marked as cut.</summary>
    /// <exception cref="ArgumentException">The plan has no such board.</exception>
    public static MakerChoices Cut(Plan plan, MakerChoices choices, string piece)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(choices);
        var done = plan.Boards.FirstOrDefault(b => b.Piece == piece) ?? throw new ArgumentException($"The plan has no board {piece}.", nameof(piece));
        return Milled(plan, choices with { Cut = [.. choices.Cut.Where(b => b.Piece != piece), done] });
    }

    /// <summary>Choices, which may be later than the plan's, with a strip of the plan marked as milled.</summary>
    /// <exception cref="ArgumentException">No glue-up of the plan has such a strip.</exception>
    public static MakerChoices Mill(Plan plan, MakerChoices choices, string piece)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(choices);
        var glueUp = plan.GlueUps.FirstOrDefault(g => g.Strips.Any(s => s.Piece == piece)) ?? throw new ArgumentException($"The plan has no strip {piece}.", nameof(piece));
        var done = new MilledStrip(glueUp.Gift, glueUp.Part, glueUp.Strips.First(s => s.Piece == piece));
        return Milled(plan, choices with { MilledStrips = [.. choices.MilledStrips.Where(m => m.Strip.Piece != piece), done] });
    }

    /// <summary>Choices without the mark on a strip.</summary>
    public static MakerChoices Unmill(MakerChoices choices, string piece)
    {
        ArgumentNullException.ThrowIfNull(choices);
        return Needed(choices with { MilledStrips = choices.MilledStrips.RemoveAll(m => m.Strip.Piece == piece) });
    }

    /// <summary>Choices without the mark on a glue-up.</summary>
    public static MakerChoices Unglue(MakerChoices choices, string glueUp)
    {
        ArgumentNullException.ThrowIfNull(choices);
        return Needed(choices with { Glued = choices.Glued.RemoveAll(g => g.Id == glueUp) });
    }

    /// <summary>Choices without the mark on a board.</summary>
    public static MakerChoices Uncut(MakerChoices choices, string piece)
    {
        ArgumentNullException.ThrowIfNull(choices);
        return Needed(choices with { Cut = choices.Cut.RemoveAll(b => b.Piece == piece) });
    }

    /// <summary>Takes down how the plan mills the offcuts of what is done; what the plan does not use keeps what was taken down before.</summary>
    private static MakerChoices Milled(Plan plan, MakerChoices choices)
    {
        var used = plan.GlueUps.SelectMany(g => g.Strips).Select(s => s.Piece).Concat(plan.Boards.Select(b => b.Piece)).ToHashSet(StringComparer.Ordinal);
        var pieces = Pieces(choices);
        var now = plan.Stock()
            .Where(o => pieces.Any(p => p.Offcut == o.Label && used.Contains(p.Piece))).Select(o => MilledOffcut.Of(plan, o)).ToList();
        return Needed(choices with { Milled = [.. choices.Milled.Where(old => now.All(m => m.Offcut != old.Offcut)), .. now] });
    }

    private static MakerChoices Needed(MakerChoices choices)
    {
        var pieces = Pieces(choices).Select(p => p.Piece).ToHashSet(StringComparer.Ordinal);
        return choices with
        {
            Milled = [.. choices.Milled.Select(m => m.Keeping(pieces)).Where(m => m.Lanes.Any(l => !l.Pieces.IsEmpty)).OrderBy(m => m.Offcut, StringComparer.Ordinal)],
        };
    }

    private static List<(string Offcut, string Piece)> Pieces(MakerChoices choices) =>
        [.. choices.Glued.SelectMany(g => g.Strips).Select(s => (s.Offcut, s.Piece)).Concat(choices.Cut.Select(b => (b.Offcut, b.Piece)))
        .Concat(choices.MilledStrips.Select(m => (m.Strip.Offcut, m.Strip.Piece)))];
}
