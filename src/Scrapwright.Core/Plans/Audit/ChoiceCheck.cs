using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans.Choices;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>The maker's choices: saved wood is whole, pins and orders are kept, and work that is done is as it was.</summary>
internal sealed class ChoiceCheck(Facts facts, Findings findings)
{
    private MakerChoices Choices => facts.Plan.Request.Choices;

    /// <summary>Looks at all choices.</summary>
    public void Check()
    {
        if (Choices.AreNone) return;
        var worked = facts.Plan.Steps.SelectMany(s => s.Works).SelectMany(w => w.In).ToHashSet(StringComparer.Ordinal);
        var done = Choices.Glued.SelectMany(g => g.Strips.Select(s => (s.Offcut, s.Piece))).Concat(Choices.Cut.Select(b => (b.Offcut, b.Piece))).ToHashSet();
        var used = facts.Plan.GlueUps.SelectMany(g => g.Strips.Select(s => (s.Offcut, s.Piece))).Concat(facts.Plan.Boards.Select(b => (b.Offcut, b.Piece))).ToArray();
        foreach (var label in Saved())
        {
            // Of one that is cut already the rest is kept.
            var isKept = done.Any(d => d.Offcut == label) ? used.All(u => u.Offcut != label || done.Contains(u)) : !worked.Contains(label);
            findings.Require(isKept, $"offcut {label}", "it is worked", "kept for later");
        }

        foreach (var pin in Choices.Pins.Where(p => facts.Plan.Made.Any(m => m.Gift == p.Gift) && facts.FindPart(p.Gift, p.Part) is { Kind: PartKind.Panel }))
        {
            var kept = facts.Plan.GlueUps.Any(g => g.IsFor(pin.Gift, pin.Part) && g.Strips.Any(s => s.Offcut == pin.Offcut));
            findings.Require(kept, $"pin of {pin.Offcut} to {pin.Gift} {pin.Part}", "no strip of it there", "a strip of it");
        }

        foreach (var glueUp in facts.Plan.GlueUps)
        {
            CheckOrder(glueUp);
        }

        CheckDone();
    }

    private IEnumerable<string> Saved() =>
        from entry in facts.Plan.Request.Pile
        from piece in entry.Pieces()
        where Choices.Saved.Contains(entry.Label) || Choices.Saved.Contains(piece.Label)
        select piece.Label;

    /// <summary>The latest order for just these strips holds when their neighbours may lie so; what is glued stays anyhow.</summary>
    private void CheckOrder(GlueUp glueUp)
    {
        if (Choices.Glued.Any(g => g.Id == glueUp.Id)) return;
        (string Offcut, Length Width)[] now = [.. glueUp.Strips.Select(s => (s.Offcut, s.RoughWidth))];
        for (var i = Choices.Orders.Length - 1; i >= 0; i--)
        {
            var order = Choices.Orders[i];
            (string Offcut, Length Width)[] wanted = [.. order.Strips.Select(s => (s.Offcut, s.RoughWidth))];
            if (order.Gift == glueUp.Gift && order.Part == glueUp.Part && now.Order().SequenceEqual(wanted.Order()))
            {
                if (MayLie(glueUp, [.. wanted.Select(w => w.Offcut)]))
                {
                    findings.Same($"glue-up {glueUp.Id} order of strips", now.Select(s => $"{s.Offcut} {s.Width}"), wanted.Select(s => $"{s.Offcut} {s.Width}"));
                }

                return;
            }
        }
    }

    private bool MayLie(GlueUp glueUp, string[] offcuts)
    {
        if (facts.FindPart(glueUp.Gift, glueUp.Part)?.Wish is not { MinimumStrips: >= 2 } wish) return true;
        return offcuts.Zip(offcuts.Skip(1)).All(pair =>
        {
            var isSame = facts.OffcutByLabel[pair.First].Species == facts.OffcutByLabel[pair.Second].Species;
            return wish.Pattern == StripPattern.Graduated ? !isSame
                : (isSame && wish.Pattern == StripPattern.Accent) || facts.Contrast(pair.First, pair.Second) >= (wish.LeastContrast ?? facts.Shop.MinimumContrast);
        });
    }

    private void CheckDone()
    {
        var holds = DoneWork.Of(facts.Plan.Request, facts.Designs);
        foreach (var done in Choices.Glued)
        {
            var where = $"glued {done.Id}";
            if (!holds.Glued.Contains(done))
            {
                CheckLeftAlone(where, done.Strips.Select(s => (s.Offcut, s.Piece)));
            }
            else if (!facts.GlueUpById.TryGetValue(done.Id, out var now))
            {
                findings.Add(where, "not there", "as it was glued");
            }
            else
            {
                findings.Equal(where, (now.Gift, now.Part, now.Blanks, now.Layers), (done.Gift, done.Part, done.Blanks, done.Layers));
                findings.Same(where + " strips", now.Strips, done.Strips);
                findings.Same(where + " other gifts", now.Also, done.Also);
            }
        }

        CheckMilled(holds);
        foreach (var done in Choices.Cut)
        {
            var where = $"cut board {done.Piece}";
            if (!holds.Cut.Contains(done))
            {
                CheckLeftAlone(where, [(done.Offcut, done.Piece)]);
            }
            else
            {
                findings.Require(facts.Plan.Boards.Contains(done), where, "not as it was cut", $"{done.Gift} run {done.Run}, {done.Length} × {done.Width} × {done.Thickness}");
            }
        }
    }

    /// <summary>A strip that is milled is in a glue-up of its part, as it is or cut shorter, when its gift is made.</summary>
    private void CheckMilled(DoneWork holds)
    {
        foreach (var milled in Choices.MilledStrips)
        {
            var where = $"milled strip {milled.Strip.Piece}";
            if (!holds.MilledStrips.Contains(milled))
            {
                if (!holds.IsUsedUp(milled.Strip.Piece)) CheckLeftAlone(where, [(milled.Strip.Offcut, milled.Strip.Piece)]);
            }
            else if (facts.Plan.Made.Any(m => m.Gift == milled.Gift))
            {
                var isThere = facts.Plan.GlueUps.Any(g => g.IsFor(milled.Gift, milled.Part) && g.Strips.Any(milled.Is));
                findings.Require(isThere, where, $"in no glue-up of {milled.Gift} {milled.Part}", "in one of them, as it was milled");
            }
        }
    }

    /// <summary>Wood that was used up for something that no longer fits is used for nothing else.</summary>
    private void CheckLeftAlone(string where, IEnumerable<(string Offcut, string Piece)> strips)
    {
        foreach (var (offcut, piece) in strips)
        {
            // A piece that is a whole lane, or the whole offcut, bears its name: then the lane is worked, but neither glued nor cut.
            var used = facts.GlueUpByStrip.ContainsKey(piece) || facts.BoardByPiece.ContainsKey(piece);
            findings.Require(!used, $"{where} strip {piece} of {offcut}", "used for something else", "left alone");
        }
    }
}
