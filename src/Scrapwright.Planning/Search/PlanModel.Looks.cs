using Google.OrTools.Sat;
using Scrapwright.Core.Designs;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <content>The looks level.</content>
internal sealed partial class PlanModel
{
    private readonly Dictionary<int, BoolVar> knownGifts = [];

    /// <summary>Pairs in a circle that differ, wished species present, parts wished mirrored whose panels all can: one point each; one off for each species beside the wished ones.</summary>
    private List<(IntVar Variable, long Worth)> LooksLevel() =>
    [
        .. CirclePairsThatDiffer().Select(v => ((IntVar)v, 1L)),
        .. Wishes().Select(w => ((IntVar)w.Species, w.Points)),
        .. MirroredParts().Select(v => ((IntVar)v, 1L)),
    ];

    private IEnumerable<BoolVar> CirclePairsThatDiffer()
    {
        foreach (var circle in problem.Gifts.Where(g => g.Gift.Circle.Length > 0).GroupBy(g => g.Gift.Circle, StringComparer.OrdinalIgnoreCase))
        {
            var gifts = circle.ToList();
            for (var i = 0; i < gifts.Count; i++)
            {
                for (var j = i + 1; j < gifts.Count; j++)
                {
                    if (scope.Gifts.Contains(gifts[i].Index) || scope.Gifts.Contains(gifts[j].Index))
                    {
                        yield return Differ(gifts[i], gifts[j]);
                    }
                }
            }
        }
    }

    private BoolVar Differ(GiftDemand one, GiftDemand other)
    {
        var differences = new List<BoolVar>();
        var sameFamily = one.Product.Family == other.Product.Family;
        if (sameFamily)
        {
            var mine = SpeciesOf(one.Index);
            var theirs = SpeciesOf(other.Index);
            foreach (var species in mine.Keys.Union(theirs.Keys).Order(StringComparer.Ordinal))
            {
                differences.Add(Difference(mine.GetValueOrDefault(species), theirs.GetValueOrDefault(species)));
            }
        }

        var (oneMade, otherMade) = (MadeOrNot(one.Index), MadeOrNot(other.Index));
        var differ = Follows(
            model.NewBoolVar(""),
            h => h[oneMade] == 1 && h[otherMade] == 1 && (!sameFamily || differences.Any(d => h[d] == 1)) ? 1 : 0);
        model.AddImplication(differ, oneMade);
        model.AddImplication(differ, otherMade);
        if (sameFamily)
        {
            model.Add(LinearExpr.Sum(differences) >= differ);
        }

        return differ;
    }

    /// <summary>At most 1 when exactly one of the two has the species.</summary>
    private BoolVar Difference(BoolVar? one, BoolVar? other)
    {
        List<BoolVar> present = [.. new[] { one, other }.OfType<BoolVar>()];
        var difference = Follows(model.NewBoolVar(""), h => present.Sum(p => h[p]) == 1 ? 1 : 0);
        model.Add(LinearExpr.Sum(present) >= difference);
        if (present.Count == 2)
        {
            model.Add(LinearExpr.Sum(present) + difference <= 2);
        }

        return difference;
    }

    /// <summary>Whether a gift is made: searched for within the scope, known outside it.</summary>
    private BoolVar MadeOrNot(int gift)
    {
        if (scope.Gifts.Contains(gift))
        {
            return Made(gift);
        }

        if (!knownGifts.TryGetValue(gift, out var known))
        {
            knownGifts[gift] = known = Constant(scope.Rest?.Made[gift] ?? false);
        }

        return known;
    }

    private Dictionary<string, BoolVar> SpeciesOf(int gift) => scope.Gifts.Contains(gift)
        ? AnyOf(
            problem.Panels.Where(p => p.GiftIndex == gift).SelectMany(p => panelSpecies[p.Index])
                .Concat(problem.Runs.Where(r => r.GiftIndex == gift).SelectMany(r => solidSpecies[r.Index])))
        : (scope.Rest?.Segments ?? []).Where(s => s.GiftIn(problem) == gift).Select(s => problem.Patterns[s.Pattern].Offcut.Species).Distinct()
            .ToDictionary(s => s, _ => Constant(true));

    private Dictionary<string, BoolVar> SpeciesOf(int gift, Part part) => AnyOf(
        problem.Panels.Where(p => p.GiftIndex == gift && p.Part.Key == part.Key).SelectMany(p => panelSpecies[p.Index])
            .Concat(problem.Runs.Where(r => r.GiftIndex == gift && r.Runs.Any(a => a.Members.Any(m => m.Part == part.Key))).SelectMany(r => solidSpecies[r.Index])));

    private Dictionary<string, BoolVar> AnyOf(IEnumerable<SpeciesCount> counts)
    {
        var result = new Dictionary<string, BoolVar>();
        foreach (var group in counts.GroupBy(c => c.Species))
        {
            var any = Follows(model.NewBoolVar(""), h => group.Max(c => h[c.IsPresent]));
            model.AddMaxEquality(any, group.Select(c => c.IsPresent));
            result[group.Key] = any;
        }

        return result;
    }

    private IEnumerable<(BoolVar Species, long Points)> Wishes()
    {
        foreach (var gift in FreeGifts)
        {
            foreach (var part in gift.Product.Parts)
            {
                var wished = (part.Wish?.Species ?? part.Species).Distinct().ToList();
                if (wished.Count > 0)
                {
                    foreach (var (species, isThere) in SpeciesOf(gift.Index, part))
                    {
                        yield return (isThere, wished.Contains(species) ? 1 : -1);
                    }
                }
            }
        }
    }

    /// <summary>A panel can be mirrored when just one species comes an odd number of times: it takes the middle. All panels of a part must.</summary>
    private IEnumerable<BoolVar> MirroredParts()
    {
        foreach (var part in FreePanels.Where(p => p.Wish.Pattern == StripPattern.Mirrored).GroupBy(p => (p.GiftIndex, p.Part.Key)))
        {
            var panelMirrors = part.Select(p => (Panel: Panel(p), Mirrors: Mirrors(p))).ToList();
            var isMade = Made(part.Key.GiftIndex);
            var point = Follows(model.NewBoolVar(""), h => h[isMade] == 1 && panelMirrors.All(p => h[p.Panel] == 0 || h[p.Mirrors] == 1) ? 1 : 0);
            model.AddImplication(point, isMade);
            foreach (var (panel, mirrors) in panelMirrors)
            {
                model.AddBoolOr([point.Not(), panel.Not(), mirrors]);
            }

            yield return point;
        }
    }

    private BoolVar Mirrors(PanelCandidate panel)
    {
        var odds = new List<BoolVar>();
        foreach (var species in panelSpecies[panel.Index])
        {
            var odd = Follows(model.NewBoolVar(""), h => h[species.Count] % 2);
            var pairs = Follows(model.NewIntVar(0, MostStrips / 2, ""), h => h[species.Count] / 2);
            model.Add(species.Count == (2 * pairs) + odd);
            odds.Add(odd);
        }

        var mirrors = Follows(model.NewBoolVar(""), h => h[Panel(panel)] == 1 && odds.Sum(o => h[o]) == 1 ? 1 : 0);
        model.AddImplication(mirrors, Panel(panel));
        model.Add(LinearExpr.Sum(odds) == 1).OnlyEnforceIf(mirrors);
        return mirrors;
    }
}
