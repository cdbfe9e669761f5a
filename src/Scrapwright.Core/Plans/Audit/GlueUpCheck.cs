using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>The summary of a glue-up against the strips that are really glued.</summary>
internal sealed class GlueUpCheck(Facts facts, Findings findings)
{
    /// <summary>Two ways of adding the spreads of strips up part by so much; what the plan must state to the picometre is compared once all else holds.</summary>
    private static readonly Length RoundingOfSpreads = Length.FromPicometres(1000);

    /// <summary>Compares every number of one glue-up.</summary>
    public void Check(GlueUp glueUp, LivePiece[] strips)
    {
        var where = $"glue-up {glueUp.Id}";
        var shop = facts.Shop;
        CheckStrips(glueUp, strips, where);
        findings.Equal(where + " overlap", glueUp.Overlap, strips.Min(s => s.Piece.Length));
        findings.Equal(where + " rough width", glueUp.RoughWidth, Length.Sum(strips.Select(s => s.Piece.Width)));
        CheckClamps(glueUp, where);
        if (facts.FindPart(glueUp.Gift, glueUp.Part) is not { Kind: PartKind.Panel } part)
        {
            findings.Add(where, $"{glueUp.Gift} {glueUp.Part}", "a panel part of a gift");
            return;
        }

        findings.Equal(where + " target width", glueUp.TargetWidth, part.Width);
        var needed = (part.Length * glueUp.Blanks) + (shop.TableSaw.Kerf * (glueUp.Blanks - 1)) + (shop.Allowances.EndTrim.Mean * 2);
        findings.Require(glueUp.Overlap >= needed, where + " overlap", glueUp.Overlap, $"at least {needed}");
        if (part.Wish is { } wish)
        {
            findings.Require(
                glueUp.Strips.Length >= wish.MinimumStrips && glueUp.Strips.Length <= wish.MaximumStrips,
                where + " strips", glueUp.Strips.Length, $"{wish.MinimumStrips} to {wish.MaximumStrips}");
            CheckContrast(glueUp, strips, wish, where);
            CheckHearts(glueUp, wish, where);
        }

        new SisterCheck(findings).Check(glueUp, strips, where);
        CheckLadders(glueUp, strips, part, where);
        CheckShares(glueUp, part, where);
    }

    /// <summary>Gifts that share a glue-up need parts alike, each its own.</summary>
    private void CheckShares(GlueUp glueUp, Part part, string where)
    {
        var isDone = facts.Plan.Request.Choices.Glued.Any(d => d.Is(glueUp));
        findings.Require(glueUp.ForGifts().Distinct().Count() == glueUp.Also.Length + 1, where + " gifts", "a gift twice", "each once");
        findings.Require(glueUp.Also.Sum(a => (long)a.Pieces) < (long)glueUp.Blanks * glueUp.Layers, where + " pieces for others", "all of them", "some for the gift it is named for");
        foreach (var share in glueUp.Also)
        {
            findings.Require(share.Pieces >= 1, $"{where} pieces for {share.Gift}", share.Pieces, "1 or more");
            var isAlike = facts.FindPart(share.Gift, share.Part) is { Kind: PartKind.Panel } other
                && other.HasSizeOf(part)
                && (part.Wish is null ? other.Wish is null : other.Wish is { } wish && wish.IsLike(part.Wish));
            findings.Require(isAlike || isDone, where, $"{share.Gift} {share.Part}", $"a part of the size and looks of {glueUp.Gift} {glueUp.Part}");
        }
    }

    private void CheckStrips(GlueUp glueUp, LivePiece[] strips, string where)
    {
        if (!findings.Equal(where + " strips", glueUp.Strips.Length, strips.Length))
        {
            return;
        }

        var edges = facts.Shop.Allowances.EdgeJoint.Mean * 2;
        foreach (var (listed, live) in glueUp.Strips.Zip(strips))
        {
            var at = $"{where} strip {listed.Piece}";
            findings.Equal(at + " name", listed.Piece, live.Piece.Id);
            findings.Equal(at + " offcut", listed.Offcut, live.Piece.Lanes.IsEmpty ? "" : live.Piece.Lanes[0].Offcut);
            findings.Equal(at + " width", listed.Width, live.Piece.Width);
            findings.Equal(at + " rough width", listed.RoughWidth, live.Piece.Width + edges);
            findings.Equal(at + " layers", listed.Layers, live.Layers);
            findings.Equal(at + " length", listed.Length, live.Piece.Length);
            findings.Equal(at + " thickness", listed.Thickness, live.BeforePlaning ?? live.Piece.Thickness);
            findings.Require(listed.Width >= facts.Shop.NarrowestStrip, at + " width", listed.Width, $"at least {facts.Shop.NarrowestStrip}");
        }
    }

    private void CheckClamps(GlueUp glueUp, string where)
    {
        var spacing = facts.Shop.ClampSpacing.Picometres;
        var spaces = ((glueUp.Overlap.Picometres - 1) / spacing) + 1;
        var needed = Math.Max(2, spaces + 1);
        findings.Equal(where + " clamps", glueUp.ClampsNeeded, needed);
        var rack = facts.Shop.Clamps.Where(c => c.Reach >= glueUp.RoughWidth).Sum(c => (long)c.Count);
        findings.Require(needed <= rack, where + " clamps", needed, $"at most the {rack} on the rack that reach {glueUp.RoughWidth}");
    }

    private void CheckContrast(GlueUp glueUp, LivePiece[] live, PanelWish wish, string where)
    {
        var asked = wish.LeastContrast ?? facts.Shop.MinimumContrast;
        double least = double.PositiveInfinity;
        for (var i = 1; i < glueUp.Strips.Length; i++)
        {
            string lower = glueUp.Strips[i - 1].Offcut, upper = glueUp.Strips[i].Offcut;
            var contrast = facts.Contrast(lower, upper);
            least = Math.Min(least, contrast);
            if (wish.MinimumStrips < 2)
            {
                continue;
            }

            // Sisters side by side in the middle are what a book-matched panel is made for.
            if (wish.Pattern == StripPattern.BookMatched && i * 2 == glueUp.Strips.Length && i < live.Length && live[i - 1].IsSisterOf(live[i]))
            {
                continue;
            }

            if (wish.Pattern == StripPattern.Accent && SpeciesOf(lower) == SpeciesOf(upper))
            {
                continue;
            }

            if (wish.Pattern == StripPattern.Graduated)
            {
                findings.Require(SpeciesOf(lower) != SpeciesOf(upper), $"{where} strips {i} and {i + 1}", "the same wood side by side", "different woods");
            }
            else
            {
                findings.Require(contrast >= asked, $"{where} strips {i} and {i + 1} contrast", contrast, $"at least {asked}");
            }
        }

        var expected = double.IsFinite(least) ? (int)Math.Floor(100 * least) : 0;
        findings.Equal(where + " least contrast, hundredths", glueUp.LeastContrastHundredths, expected);
    }

    private void CheckHearts(GlueUp glueUp, PanelWish wish, string where)
    {
        for (var i = 0; i < glueUp.Strips.Length; i++)
        {
            bool? expected = wish.Hearts switch
            {
                HeartSides.Alike => true,
                HeartSides.Alternating => i % 2 == 0,
                _ => null,
            };
            findings.Require(glueUp.Strips[i].HeartUp == expected, $"{where} strip {i + 1} heart", glueUp.Strips[i].HeartUp?.ToString() ?? "as it comes", expected?.ToString() ?? "as it comes");
        }
    }

    private string SpeciesOf(string offcut) => facts.OffcutByLabel.TryGetValue(offcut, out var found) ? found.Species : "";

    private void CheckLadders(GlueUp glueUp, LivePiece[] strips, Part part, string where)
    {
        var shop = facts.Shop;
        var before = strips.Select(s => (Thickness: s.BeforePlaning ?? s.Piece.Thickness, Spread: SpreadOf(s))).ToArray();
        var thinnest = before.Min(b => b.Thickness);
        var spread = before.Where(b => b.Thickness == thinnest).Max(b => b.Spread);
        var thickness = PanelLadders.Thickness(thinnest, spread, glueUp.Layers, part, shop);
        var rough = Length.Sum(strips.Select(s => s.Piece.Width));
        var width = PanelLadders.Width(rough, StripsSpreadMm(strips), part, shop);
        CheckLadder(where + " thickness ladder", glueUp.ThicknessLadder, thinnest, thickness.Rungs, Length.Zero);
        CheckLadder(where + " width ladder", glueUp.WidthLadder, rough, width.Rungs, RoundingOfSpreads);
    }

    /// <summary>Strips whose edges were jointed as one are all wider or narrower together.</summary>
    private static double StripsSpreadMm(LivePiece[] strips) =>
        Math.Sqrt(strips.SelectMany(s => s.EdgeWorks).GroupBy(w => w.Work).Sum(g => Math.Pow(g.Sum(w => w.SpreadMm), 2)));

    private Length SpreadOf(LivePiece strip) =>
        strip.Piece.Lanes is [var lane] && facts.OffcutByLabel.TryGetValue(lane.Offcut, out var offcut)
            ? PanelLadders.FaceSpread(offcut, facts.FacedByLabel.TryGetValue(lane.Offcut, out var board) ? board.Spread : Length.Zero, strip.Layers, facts.Shop) : Length.Zero;

    private void CheckLadder(string where, Ladder found, Length start, List<Rung> rungs, Length rounding)
    {
        findings.Equal(where + " start", found.Start, start);
        findings.Same(where + " operations", found.Rungs.Select(r => r.Operation), rungs.Select(r => r.Operation));
        foreach (var (rung, expected) in found.Rungs.Zip(rungs))
        {
            findings.Equal($"{where} {rung.Operation} taken", rung.Taken, expected.Taken);
            findings.Equal($"{where} {rung.Operation} after", rung.After, expected.After);
            findings.Require((rung.Spread - expected.Spread).Abs() <= (expected.Spread.IsZero ? Length.Zero : rounding), $"{where} {rung.Operation} spread", rung.Spread, expected.Spread);
        }
    }
}
