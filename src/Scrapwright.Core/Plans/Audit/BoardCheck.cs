using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>The summary of a board run against the strip that its parts are really cut from.</summary>
internal sealed class BoardCheck(Facts facts, Findings findings)
{
    /// <summary>Compares every number of one board run.</summary>
    public void Check(BoardRun board, LivePiece strip)
    {
        var where = $"board {board.Piece}";
        var shop = facts.Shop;
        findings.Equal(where + " offcut", board.Offcut, strip.Piece.Lanes.IsEmpty ? "" : strip.Piece.Lanes[0].Offcut);
        var width = strip.BeforeTrim ?? strip.Piece.Width;
        var thickness = strip.BeforePlaning ?? strip.Piece.Thickness;
        findings.Equal(where + " width", board.Width, width);
        findings.Equal(where + " rough width", board.RoughWidth, width + (shop.Allowances.EdgeJoint.Mean * 2));
        findings.Equal(where + " layers", board.Layers, strip.Layers);
        findings.Equal(where + " length", board.Length, strip.Piece.Length);
        findings.Equal(where + " thickness", board.Thickness, thickness);
        findings.Require(!WoodFlaws.Touch(strip, facts), where, "a defect", "sound wood");
        if (facts.FindRun(board.Gift, board.Run) is not { Members.IsEmpty: false } run
            || facts.FindPart(board.Gift, run.Members[0].Part) is not { } part)
        {
            findings.Add(where, $"{board.Gift} run {board.Run}", "a run of a gift");
            return;
        }

        var planed = part.Thickness + (shop.Allowances.Sand.Mean * 2);
        findings.Equal(where + " thickness when cut", strip.Piece.Thickness, planed);
        findings.Equal(where + " width when cut", strip.Piece.Width, part.Width);
        var parts = Length.Sum(run.Members.Select(m => facts.FindPart(board.Gift, m.Part)?.Length ?? default));
        var needed = parts + (shop.TableSaw.Kerf * (run.Members.Length - 1)) + (shop.Allowances.EndTrim.Mean * 2);
        findings.Require(board.Length >= needed, where + " length", board.Length, $"at least {needed}");
    }
}
