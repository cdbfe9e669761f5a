using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Ideas;
using Scrapwright.Planning.Problems;
using Scrapwright.Planning.Search;

namespace Scrapwright.Planning.Ideas;

/// <summary>Every part that an offcut might be wood for.</summary>
internal static class OffcutTargets
{
    /// <summary>Parts of gifts on the list first, then of every design in its sizes, one more gift at a time; whether some way of milling the offcut gives what the part takes; and else the board that would, when it is glued face to face with another that serves nothing alone.</summary>
    internal static IEnumerable<(OffcutTarget Target, bool Fits, string Board)> For(IdeaBase start, string offcut)
    {
        if (start.HasList)
        {
            var list = ProblemMaker.Make(Free(start.Workshop, offcut));
            foreach (var target in list.Gifts.SelectMany(g => Of(list, g, null, offcut)))
            {
                yield return target;
            }
        }

        foreach (var variant in IdeaVariants.For(start.Workshop).Where(v => v.Step != IdeaStep.OtherNumber))
        {
            var gift = variant.ToGift(new IdeaLabels(start.Workshop.Gifts.Select(g => g.Label)).Next(variant.Design), start.NewPriority);
            var more = ProblemMaker.Make(Free(start.With([gift]), offcut));
            foreach (var target in Of(more, more.Gifts.First(g => g.Gift.Label == gift.Label), gift, offcut))
            {
                yield return target;
            }
        }
    }

    /// <summary>The same workshop in which the offcut may be used: kept for later or not, the maker asks about it.</summary>
    private static PlanRequest Free(PlanRequest request, string offcut) =>
        request with { Choices = request.Choices with { Saved = [.. request.Choices.SavedIn(request.Pile).Where(o => o != offcut)] } };

    private static IEnumerable<(OffcutTarget Target, bool Fits, string Board)> Of(Problem problem, GiftDemand gift, Gift? added, string offcut)
    {
        var options = new SegmentOptions(problem);
        var index = problem.Offcuts.Index().First(o => o.Item.Label == offcut).Index;
        foreach (var part in gift.Product.Parts.Where(p => p.Kind == PartKind.Panel && problem.StillNeeded(gift, p) > 0))
        {
            var all = problem.Panels.Where(p => p.IsFor(gift.Index, part.Key) && p.Done is null).SelectMany(p => options.ForPanel(p.Index)).ToList();
            yield return (new(problem.Request, gift, part.Key, null, part.Title, added), all.Any(IsOfOffcut), BoardIn(all));
        }

        foreach (var run in problem.Runs.Where(r => r.GiftIndex == gift.Index && r.Done is null))
        {
            var titles = run.Runs[0].Members.Select(m => gift.Product.Parts.First(p => p.Key == m.Part).Title).Distinct();
            yield return (new(problem.Request, gift, null, run, string.Join(", ", titles), added), options.ForSolid(run.Index).Any(IsOfOffcut), BoardIn(options.ForSolid(run.Index)));
        }

        string BoardIn(IEnumerable<SegmentOption> all) => all.Select(o => problem.Patterns[o.Segment.Pattern])
            .Where(p => p.Facing is { } facing && (facing.Upper == index || facing.Lower == index)).Select(p => p.Offcut.Label).FirstOrDefault("");

        bool IsOfOffcut(SegmentOption option) => problem.Patterns[option.Segment.Pattern].OffcutIndex == index;
    }
}
