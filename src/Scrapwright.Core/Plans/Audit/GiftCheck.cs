using Scrapwright.Core.Designs;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>Every gift is made or not made, and a made one has all its parts at finished size.</summary>
internal sealed class GiftCheck(Facts facts, Findings findings)
{
    /// <summary>Looks at all gifts.</summary>
    public void Check(Stock stock)
    {
        var labels = facts.Plan.Request.Gifts.Select(g => g.Label).ToArray();
        var made = facts.Plan.Made.Select(m => m.Gift).ToArray();
        var unmade = facts.Plan.Unmade.Select(u => u.Gift).ToArray();
        findings.Same("made and unmade gifts", made.Concat(unmade).Order(StringComparer.Ordinal), labels.Order(StringComparer.Ordinal));
        findings.Same("order of the made gifts", made, labels.Where(made.Contains));
        findings.Same("order of the unmade gifts", unmade, labels.Where(unmade.Contains));
        foreach (var gift in facts.Plan.Made)
        {
            CheckMade(gift, stock);
        }

        CheckSources(made);
        CheckShares(stock);
        foreach (var gift in facts.Plan.Unmade)
        {
            CheckReasons(gift);
        }
    }

    private void CheckMade(MadeGift gift, Stock stock)
    {
        if (!facts.Products.TryGetValue(gift.Gift, out var product))
        {
            findings.Add($"gift {gift.Gift}", "made", "not made: its design has no product");
            return;
        }

        var copies = product.Parts.SelectMany(p => Enumerable.Range(1, p.Count).Select(copy => (p.Key, copy))).Order();
        findings.Same($"gift {gift.Gift} parts", gift.Parts.Select(p => (p.Part, p.Copy)).Order(), copies);
        foreach (var part in product.Parts.Where(p => p.Wish is { Panels: not SetPanels.Any }))
        {
            var panels = facts.Plan.GlueUps.Count(g => g.IsFor(gift.Gift, part.Key));
            findings.Equal($"gift {gift.Gift} part {part.Key} panels", panels, part.Wish!.Panels == SetPanels.One ? 1 : part.Count);
        }

        foreach (var made in gift.Parts)
        {
            var where = $"gift {gift.Gift} part {made.Part} copy {made.Copy}";
            if (product.Parts.FirstOrDefault(p => p.Key == made.Part) is not { } part)
            {
                findings.Add(where, made.Part, "a part of the product");
            }
            else if (stock.Find(made.Piece) is not { } piece)
            {
                findings.Add(where, $"piece {made.Piece} is not there in the end", "a finished piece");
            }
            else
            {
                CheckPart(where, part, gift.Gift, product, made, piece);
            }
        }
    }

    private void CheckPart(string where, Part part, string gift, Product product, MadePart made, LivePiece live)
    {
        findings.Equal(where + " length", live.Piece.Length, part.Length);
        findings.Equal(where + " width", live.Piece.Width, part.Width);
        findings.Equal(where + " thickness", live.Piece.Thickness, part.Thickness);
        findings.Require(live.Blanked || live.Rod is not null, where, $"piece {made.Piece} was not cut to length", "a blank");
        var right = part.Kind switch
        {
            PartKind.Panel => live.Panel is { } glueUp && glueUp.IsFor(gift, part.Key),
            PartKind.Solid => live.Board is { } board && board.Gift == gift
                && product.Runs.FirstOrDefault(r => r.Mark == board.Run) is { } run
                && run.Members.Any(m => m.Part == made.Part && m.Copy == made.Copy),
            _ => live.Rod is not null,
        };
        findings.Require(right, where, $"piece {made.Piece} comes from elsewhere", $"a piece cut for this {part.Kind} part");
    }

    private void CheckSources(string[] made)
    {
        // What is glued or cut already stays in the plan, also when the rest of its gift finds no wood any more.
        var choices = facts.Plan.Request.Choices;
        foreach (var glueUp in facts.Plan.GlueUps.Where(g => !choices.Glued.Any(d => d.Is(g))))
        {
            foreach (var gift in glueUp.ForGifts())
            {
                findings.Require(made.Contains(gift), $"glue-up {glueUp.Id}", gift, "a gift that is made");
            }
        }

        foreach (var board in facts.Plan.Boards.Where(b => !choices.Cut.Contains(b)))
        {
            findings.Require(made.Contains(board.Gift), $"board {board.Piece}", board.Gift, "a gift that is made");
        }

        foreach (var gift in made)
        {
            if (facts.Products.TryGetValue(gift, out var product))
            {
                findings.Same(
                    $"gift {gift} board runs",
                    facts.Plan.Boards.Where(b => b.Gift == gift).Select(b => b.Run).Order(StringComparer.Ordinal),
                    product.Runs.Select(r => r.Mark).Order(StringComparer.Ordinal));
            }
        }
    }

    /// <summary>Gifts that share a glue-up get as many pieces of it as it says.</summary>
    private void CheckShares(Stock stock)
    {
        foreach (var glueUp in facts.Plan.GlueUps)
        {
            foreach (var share in glueUp.Also)
            {
                if (facts.Plan.Made.FirstOrDefault(m => m.Gift == share.Gift) is { } made)
                {
                    var got = made.Parts.Count(p => p.Part == share.Part && stock.Find(p.Piece)?.Panel == glueUp);
                    findings.Equal($"glue-up {glueUp.Id} pieces for {share.Gift}", share.Pieces, got);
                }
            }
        }
    }

    private void CheckReasons(UnmadeGift gift)
    {
        if (facts.Designs.FirstOrDefault(d => d.Gift.Label == gift.Gift) is not { } design)
        {
            return;
        }

        findings.Require(!gift.Reasons.IsEmpty, $"gift {gift.Gift} reasons", "none", "why it is not made");
        findings.Same($"gift {gift.Gift} reasons", gift.Reasons, Shortages.For(design, facts.Plan.Leftovers, facts.Plan.Request));
    }
}
