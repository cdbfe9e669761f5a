using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Core.Plans.Ideas;

namespace Scrapwright.Planning.Ideas;

/// <summary>Where one offcut serves best: each part it might be wood for is planned with it, and compared with the best plan that leaves it alone. That a gift needs it is only said when both are proven.</summary>
internal sealed class OffcutSearch(IdeaBase start, IdeaBudget budget, string offcut, IProgress<IdeasProgress>? progress)
{
    /// <summary>So many of the most promising parts share the time; what they leave goes to the next.</summary>
    private const int MostAtOnce = 8;

    internal IdeasAnswer Answer(IdeasAnswer answer)
    {
        var all = OffcutTargets.For(start, offcut).ToList();
        var uses = new List<OffcutUse>();
        var notTried = ImmutableArray.CreateBuilder<string>();
        var targets = Promising(all.Where(t => t.Fits).Select(t => t.Target)).ToList();
        foreach (var (tried, target) in targets.Index())
        {
            if (!budget.HasTime || !Try(target, 2 * Math.Clamp(targets.Count - tried, 1, MostAtOnce), uses))
            {
                notTried.Add(target.Title);
            }

            progress?.Report(new IdeasProgress(tried + 1, targets.Count, target.Title, null, null));
        }

        return answer with
        {
            Uses = IdeaRanks.Ranked(uses),
            Reasons = uses.Count == 0 && notTried.Count == 0 ? [.. all.Select(t => ReasonOf(t.Target)).OfType<Reason>().Distinct()] : [],
            Boards = uses.Count == 0 && notTried.Count == 0 ? [.. all.Select(t => t.Board).Where(b => b.Length > 0).Distinct()] : [],
            NotTried = notTried.ToImmutable(),
        };
    }

    /// <summary>Those first of which a first placement, without the solver, puts most of the offcut to use; those of which it finds no way last.</summary>
    private IEnumerable<OffcutTarget> Promising(IEnumerable<OffcutTarget> targets) => targets
        .Select(t => (Target: t, Promise: budget.HasTime ? OffcutTrial.Promise(t, start.Plan, offcut) : null))
        .ToList().OrderByDescending(t => t.Promise ?? -1).Select(t => t.Target);

    /// <summary>Plans with and without; false when that stays open.</summary>
    private bool Try(OffcutTarget target, int plansLeft, List<OffcutUse> uses)
    {
        var (with, isServing) = OffcutTrial.Serving(target, start.Plan, offcut, budget.Share(plansLeft), budget.Token);
        if (with is null)
        {
            return isServing;
        }

        if (OffcutTrial.LeavingAlone(target, start.Plan, offcut, budget.Share(plansLeft - 1), budget.Token) is not { Plan: { } without } alone)
        {
            return false;
        }

        var use = Use(target, with, without) with { IsProven = isServing && alone.IsProven };
        if (!use.IsProven && use.Difference is not { Gained.IsEmpty: true, Lost.IsEmpty: true })
        {
            return false;
        }

        uses.Add(use);
        return true;
    }

    private OffcutUse Use(OffcutTarget target, Plan with, Plan without)
    {
        var row = with.Ledger.First(r => r.Offcut == offcut);
        return new OffcutUse
        {
            Gift = target.Gift.Gift.Label,
            Title = target.Gift.Product.Summary,
            Part = target.PartTitle,
            IsSolid = target.Part is null,
            New = target.New,
            Difference = new UseDifference(
                [.. Labels(with).Except(Labels(without))],
                [.. Labels(without).Except(Labels(with))],
                Change(LevelKind.Looks),
                Change(LevelKind.WoodUsed),
                Change(LevelKind.ClampLoads)),
            ShareInGiftsPerMille = row.In == Volume.Zero ? 0 : (int)((row.Parts * 1000).CubicPicometres / row.In.CubicPicometres),
        };

        long Change(LevelKind kind) => with.Levels.First(l => l.Kind == kind).Value - without.Levels.First(l => l.Kind == kind).Value;

        static IEnumerable<string> Labels(Plan plan) => plan.Made.Select(m => m.Gift);
    }

    /// <summary>Why the offcut is no strip of a panel part, when its sizes tell; solid parts say how large a board they take.</summary>
    private Reason? ReasonOf(OffcutTarget target)
    {
        if (target.Run is { } run)
        {
            return new Reason.MissingBoard(run.Runs[0].Mark, run.Needs.RoughWidth, run.Needs.Length, run.Needs.StripThickness(Length.Zero));
        }

        var request = target.Request with { Choices = target.Request.Choices with { Pins = [new Pin(offcut, target.Gift.Gift.Label, target.Part!)] } };
        return Shortages.For(request.DeriveDesigns().First(d => d.Gift.Label == target.Gift.Gift.Label), [], request).OfType<Reason.Pinned>().FirstOrDefault();
    }
}
