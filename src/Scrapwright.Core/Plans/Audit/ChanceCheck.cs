using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>The chance of every glue-up and gift worked out once more from the steps replayed, by quadrature over the works they share.</summary>
internal sealed class ChanceCheck(Facts facts, Findings findings)
{
    private readonly List<(string Gift, string GlueUp, SizeCase Case)> cases = [];

    /// <summary>Notes a glue-up as its strips are when they are glued.</summary>
    public void Add(GlueUp glueUp, LivePiece[] strips)
    {
        if (facts.FindPart(glueUp.Gift, glueUp.Part) is not { } part || glueUp.Layers < 1 || glueUp.Blanks < 1)
        {
            return;
        }

        var (shop, layers) = (facts.Shop, glueUp.Layers);
        var layer = part.Thickness + (shop.Allowances.Sand.Mean * 2) + (layers > 1 ? shop.Allowances.ResawCleanUp.Mean : Length.Zero);
        var least = shop.Allowances.PanelFlatten.Mean + (layer * layers) + (shop.Bandsaw.Kerf * (layers - 1));
        cases.Add((glueUp.Gift, glueUp.Id, new SizeCase
        {
            Times = layers,
            LengthRoomMm = (strips.Min(s => s.Piece.Length) - (part.Length * glueUp.Blanks) - (shop.TableSaw.Kerf * (glueUp.Blanks - 1)) - (shop.Allowances.EndTrim.Mean * 2)).Millimetres,
            WidthRoomMm = (Length.Sum(strips.Select(s => s.Piece.Width)) - shop.Allowances.WidthTrim.Mean - part.Width).Millimetres,
            TrimMm = shop.Allowances.WidthTrim.Spread.Millimetres,
            FlattenMm = shop.Allowances.PanelFlatten.Spread.Millimetres,
            CleanUpMm = layers > 1 ? shop.Allowances.ResawCleanUp.Spread.Millimetres * layers : 0,
            Strips = [.. strips.Select(s => Strip(s, least))],
        }));
    }

    /// <summary>Notes a board as it is when its parts are cut.</summary>
    public void Add(BoardRun board, LivePiece strip)
    {
        if (facts.FindRun(board.Gift, board.Run) is not { Members: [var first, ..] } run || facts.FindPart(board.Gift, first.Part) is not { } part)
        {
            return;
        }

        var parts = Length.Sum(run.Members.Select(m => facts.FindPart(board.Gift, m.Part)?.Length ?? default));
        cases.Add((board.Gift, "", new SizeCase
        {
            Times = 1,
            LengthRoomMm = (strip.Piece.Length - parts - (facts.Shop.TableSaw.Kerf * (run.Members.Length - 1)) - (facts.Shop.Allowances.EndTrim.Mean * 2)).Millimetres,
            WidthRoomMm = ((strip.BeforeTrim ?? strip.Piece.Width) - part.Width).Millimetres,
            Strips = [Strip(strip, part.Thickness + (facts.Shop.Allowances.Sand.Mean * 2))],
        }));
    }

    /// <summary>Compares the chances with the plan's, and the gifts' with what is asked for, once every number they come from holds.</summary>
    public void Check()
    {
        if (!findings.AreNone)
        {
            return;
        }

        foreach (var (_, id, one) in cases.Where(c => c.GlueUp.Length > 0))
        {
            Compare($"glue-up {id} chance per mille", facts.GlueUpById[id].ChancePerMille, [one]);
        }

        foreach (var made in facts.Plan.Made)
        {
            var (share, doubt) = Compare($"gift {made.Gift} chance per mille", made.ChancePerMille, [.. cases.Where(c => c.Gift == made.Gift).Select(c => c.Case)]);
            var asked = facts.Shop.ConfidencePercent * 10;
            findings.Require((share * 1000) + doubt >= asked, $"gift {made.Gift} chance per mille", (int)Math.Floor(share * 1000), $"at least {asked}");
        }
    }

    private (double Share, double DoubtPerMille) Compare(string where, int found, SizeCase[] counted)
    {
        var share = CaseShares.Of(counted, facts.Shop.Allowances.EndTrim.Spread.Millimetres * Math.Sqrt(2));
        var doubt = CaseShares.DoubtPerMille(counted);
        findings.Require(Math.Abs(found + 0.5 - Math.Min(share * 1000, 999.999)) <= 0.5 + doubt || (found == 1000 && share > 0.9999), where, found, (int)Math.Floor(share * 1000));
        return (share, doubt);
    }

    private static SizeCase.StripCase Strip(LivePiece strip, Length least) => new(
        ((strip.BeforePlaning ?? strip.Piece.Thickness) - least).Millimetres, [.. strip.FaceWorks], strip.LayerWork, [.. strip.EdgeWorks]);
}
