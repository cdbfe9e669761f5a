using Google.OrTools.Sat;
using Scrapwright.Core.Designs;
using Scrapwright.Planning.Problems;

namespace Scrapwright.Planning.Search;

/// <content>The looks level.</content>
internal sealed partial class PlanModel
{
    private readonly Dictionary<int, BoolVar> knownGifts = [];

    /// <summary>Pairs in a circle that differ, wished species present, parts whose panels all make the pattern that is wished, pairs of pieces that differ in a set where each shall: one point each; one off for each species beside the wished ones.</summary>
    private List<(IntVar Variable, long Worth)> LooksLevel() =>
    [
        .. CirclePairsThatDiffer().Select(v => ((IntVar)v, 1L)),
        .. Wishes().Select(w => ((IntVar)w.Species, w.Points)),
        .. PartsWithTheirPattern().Select(v => ((IntVar)v, 1L)),
        .. PiecesThatDiffer().Select(v => ((IntVar)v, 1L)),
    ];

    /// <summary>Of a set whose pieces shall each be different, the pairs of panels that do not have the same woods.</summary>
    private IEnumerable<BoolVar> PiecesThatDiffer()
    {
        foreach (var gift in FreeGifts)
        {
            foreach (var part in gift.Product.Parts.Where(PlacementValues.IsEachDifferent))
            {
                var all = problem.Panels.Where(p => p.IsFor(gift.Index, part.Key) && (p.Done is not null || panels[p.Index] is not null)).ToList();
                var woods = all.Select(WoodsOf).ToList();
                for (var i = 0; i < all.Count; i++)
                {
                    for (var j = i + 1; j < all.Count; j++)
                    {
                        yield return Differ(gift.Index, woods[i], woods[j]);
                    }
                }
            }
        }
    }

    private Dictionary<string, BoolVar> WoodsOf(PanelCandidate panel) => panel.Done is null
        ? panelSpecies[panel.Index].ToDictionary(s => s.Species, s => s.IsPresent)
        : problem.DoneSegments.Where(s => s.Panel == panel.Index).Select(s => problem.Patterns[s.Pattern].Offcut.Species).Distinct().ToDictionary(s => s, _ => Constant(true));

    private BoolVar Differ(int gift, Dictionary<string, BoolVar> one, Dictionary<string, BoolVar> other)
    {
        var differences = Differences(one, other);
        var isMade = Made(gift);
        var differ = Follows(model.NewBoolVar(""), h => h[isMade] == 1 && differences.Any(d => h[d] == 1) ? 1 : 0);
        model.AddImplication(differ, isMade);
        model.Add(LinearExpr.Sum(differences) >= differ);
        return differ;
    }

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
        var sameFamily = one.Product.Family == other.Product.Family;
        var differences = sameFamily ? Differences(SpeciesOf(one.Index), SpeciesOf(other.Index)) : [];
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

    /// <summary>For each species, whether just one of the two has it.</summary>
    private List<BoolVar> Differences(Dictionary<string, BoolVar> one, Dictionary<string, BoolVar> other) =>
        [.. one.Keys.Union(other.Keys).Order(StringComparer.Ordinal).Select(s => Difference(one.GetValueOrDefault(s), other.GetValueOrDefault(s)))];

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
        ? WithDone(gift, _ => true, AnyOf(
            problem.Panels.Where(p => p.IsFor(gift)).SelectMany(p => panelSpecies[p.Index])
                .Concat(problem.Runs.Where(r => r.GiftIndex == gift).SelectMany(r => solidSpecies[r.Index]))))
        : (scope.Rest?.Segments ?? []).Where(s => s.GiftsIn(problem).Contains(gift)).Select(s => problem.Patterns[s.Pattern].Offcut.Species).Distinct()
            .ToDictionary(s => s, _ => Constant(true));

    private Dictionary<string, BoolVar> SpeciesOf(int gift, Part part) => WithDone(gift, segment => PlacementValues.Serves(problem, segment, gift, part), AnyOf(
        problem.Panels.Where(p => p.IsFor(gift, part.Key)).SelectMany(p => panelSpecies[p.Index])
            .Concat(problem.Runs.Where(r => r.GiftIndex == gift && r.Runs.Any(a => a.Members.Any(m => m.Part == part.Key))).SelectMany(r => solidSpecies[r.Index]))));

    /// <summary>Species of what is glued and cut already are there when the gift is made; when it is not, no other is either.</summary>
    private Dictionary<string, BoolVar> WithDone(int gift, Func<Segment, bool> serves, Dictionary<string, BoolVar> species)
    {
        foreach (var segment in problem.DoneSegments.Where(s => s.GiftsIn(problem).Contains(gift) && serves(s)))
        {
            species[problem.Patterns[segment.Pattern].Offcut.Species] = Made(gift);
        }

        return species;
    }

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

    /// <summary>A part has its point when all its panels make the pattern.</summary>
    private IEnumerable<BoolVar> PartsWithTheirPattern()
    {
        var done = Placement.Done(problem);
        var parts =
            from panel in problem.Panels
            where StripPatterns.IsEarned(panel.Wish.Pattern) && (panel.Done is not null || panels[panel.Index] is not null)
            from share in panel.Shares
            where scope.Gifts.Contains(share.GiftIndex)
            group panel by (share.GiftIndex, share.Part.Key);
        foreach (var part in parts)
        {
            if (part.Any(p => p.Done is not null && !PlacementValues.MakesPattern(problem, done, p.Index)))
            {
                continue;
            }

            var made = part.Where(p => p.Done is null).Select(p => (Panel: Panel(p), Meets: Meets(p))).ToList();
            var isMade = Made(part.Key.GiftIndex);
            var point = Follows(model.NewBoolVar(""), h => h[isMade] == 1 && made.All(p => h[p.Panel] == 0 || h[p.Meets] == 1) ? 1 : 0);
            model.AddImplication(point, isMade);
            foreach (var (panel, meets) in made)
            {
                model.AddBoolOr([point.Not(), panel.Not(), meets]);
            }

            yield return point;
        }
    }

    private BoolVar Meets(PanelCandidate panel) => panel.Wish.Pattern switch
    {
        StripPattern.Mirrored => Mirrors(panel),
        StripPattern.BookMatched => BookMatches(panel),
        StripPattern.Alternating => Alternates(panel),
        _ => HasAccent(panel),
    };

    /// <summary>A panel can be mirrored when just one species comes an odd number of times: it takes the middle.</summary>
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

    /// <summary>Two woods: as neighbours never are of one wood, their numbers differ by one at most.</summary>
    private BoolVar Alternates(PanelCandidate panel)
    {
        var species = panelSpecies[panel.Index];
        var alternates = Follows(model.NewBoolVar(""), h => h[Panel(panel)] == 1 && species.Sum(s => h[s.IsPresent]) == 2 ? 1 : 0);
        model.AddImplication(alternates, Panel(panel));
        model.Add(LinearExpr.Sum(species.Select(s => s.IsPresent)) == 2).OnlyEnforceIf(alternates);
        return alternates;
    }

    /// <summary>Around an accent strips of one wood may touch; two woods that look alike are not taken together.</summary>
    private void OneOfWoodsThatLookAlike(List<SpeciesCount> counts, SpeciesConflicts conflicts)
    {
        foreach (var clique in conflicts.Cliques().Where(c => c.Count > 1))
        {
            model.Add(LinearExpr.Sum(counts.Where(c => clique.Contains(c.Species)).Select(c => c.IsPresent)) <= 1);
        }
    }

    /// <summary>Two woods, one of them in a single narrow strip, three strips or more.</summary>
    private BoolVar HasAccent(PanelCandidate panel)
    {
        var species = panelSpecies[panel.Index];
        var accents = new List<BoolVar>();
        foreach (var one in species)
        {
            var wide = byPanel[panel.Index].Where(s => s.Species == one.Species && s.Option.NetWidth * StripPatterns.AccentShare > panel.Part.Width).Select(s => s.Count).ToList();
            var accent = Follows(model.NewBoolVar(""), h => h[one.Count] == 1 && wide.All(w => h[w] == 0) ? 1 : 0);
            model.Add(one.Count == 1).OnlyEnforceIf(accent);
            if (wide.Count > 0)
            {
                model.Add(LinearExpr.Sum(wide) == 0).OnlyEnforceIf(accent);
            }

            accents.Add(accent);
        }

        var has = Follows(
            model.NewBoolVar(""),
            h => h[Panel(panel)] == 1 && species.Sum(s => h[s.IsPresent]) == 2 && species.Sum(s => h[s.Count]) >= 3 && accents.Any(a => h[a] == 1) ? 1 : 0);
        model.AddImplication(has, Panel(panel));
        model.Add(LinearExpr.Sum(species.Select(s => s.IsPresent)) == 2).OnlyEnforceIf(has);
        model.Add(LinearExpr.Sum(species.Select(s => s.Count)) >= 3).OnlyEnforceIf(has);
        model.Add(LinearExpr.Sum(accents) >= has);
        return has;
    }
}
