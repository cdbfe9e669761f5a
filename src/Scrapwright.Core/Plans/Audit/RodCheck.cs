using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>Rods: every piece once, lengths that add up, and none bought that is on hand.</summary>
internal sealed class RodCheck(Facts facts, Findings findings)
{
    /// <summary>Looks at all rods and at the shopping list.</summary>
    public void Check(Stock stock)
    {
        var kerf = facts.Shop.TableSaw.Kerf;
        var cut = facts.Plan.Steps.Where(s => s.Operation == Operation.CutRods && s.AssemblyIndex >= 0)
            .SelectMany(s => s.Works).Where(w => w.In.Length == 1)
            .SelectMany(w => w.Out.Select(p => (Rod: w.In[0], p.Id))).ToLookup(p => p.Rod, p => p.Id, StringComparer.Ordinal);
        foreach (var rod in facts.Plan.Rods)
        {
            var where = $"rod {rod.Id}";
            findings.Same(where + " pieces", rod.Pieces, cut[rod.Id]);
            findings.Require(!rod.Pieces.IsEmpty, where, "nothing is cut from it", "a piece");
            var pieces = Length.Sum(rod.Pieces.Select(id => stock.Find(id)?.Piece.Length ?? default));
            var used = pieces + (kerf * rod.Pieces.Length);
            findings.Equal(where + " left", rod.Left, Length.Max(Length.Zero, rod.Length - used));
            findings.Require(used - kerf <= rod.Length, where + " length", rod.Length, $"at least {used - kerf}");
            foreach (var id in rod.Pieces)
            {
                findings.Require(IsRodPart(id), $"{where} piece {id}", "no part", "a rod part of a gift");
            }
        }

        CheckOnHand();
        findings.Same(
            "shopping list",
            facts.Plan.Shopping,
            ShoppingList.For(facts.Plan.Request, facts.Designs, facts.Plan.Made, facts.Plan.Rods));
    }

    private bool IsRodPart(string id) =>
        facts.PartByPiece.TryGetValue(id, out var made) && facts.FindPart(made.Gift, made.Part.Part)?.Kind == PartKind.Rod;

    private void CheckOnHand()
    {
        foreach (var kind in facts.Plan.Rods.GroupBy(r => (r.Species, r.Diameter, r.Length)))
        {
            var where = $"rods of {kind.Key.Species}, {kind.Key.Diameter} × {kind.Key.Length}";
            var rack = facts.Shop.Rods.Where(r => (r.Species, r.Diameter, r.Length) == kind.Key).Sum(r => (long)r.OnHand);
            var used = kind.Count(r => !r.Bought);
            findings.Require(used <= rack, where + " on hand", used, $"at most {rack}");
            findings.Require(used >= rack || kind.All(r => !r.Bought), where + " bought", "one is bought", "those on hand first");
        }
    }
}
