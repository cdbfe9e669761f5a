using System.Collections.Immutable;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Why;
using Scrapwright.Planning.Building;
using Scrapwright.Planning.Problems;
using Scrapwright.Planning.Search;

namespace Scrapwright.Planning;

/// <summary>
/// Says why a plan is as it is, by planning once more with one thing otherwise: the gift that is asked about is searched anew with the wood it has and the wood
/// nobody uses, while all other gifts stay as they are. So an answer takes seconds on any pile, and its costs are what the plan itself would change by.
/// </summary>
public sealed class Explainer
{
    /// <summary>Segments a question's model has at most; untouched offcuts beyond that are left out, and the answer is then not proven.</summary>
    private const long MostSegments = 20_000;

    private static readonly LevelKind[] Levels = [LevelKind.Looks, LevelKind.WoodUsed, LevelKind.ClampLoads];

    private readonly Problem problem;
    private readonly SegmentOptions options;
    private readonly Placement now;
    private readonly OtherwiseSearch search;
    private readonly Plan plan;
    private bool leavesWoodOut;

    private Explainer(Plan plan, PlanLimits limits, CancellationToken cancellationToken)
    {
        this.plan = plan;
        problem = ProblemMaker.Make(plan.Request, plan);
        options = new SegmentOptions(problem);
        now = FormerPlacement.AsItWas(problem, options);
        search = new OtherwiseSearch(limits, cancellationToken);
    }

    /// <summary>Answers one question. The work is done on a thread of its own.</summary>
    /// <param name="plan">A plan that holds.</param>
    /// <param name="question">The question; its gift, part and offcut are the plan's.</param>
    /// <param name="limits">When to stop; <see cref="PlanLimits.Seconds"/> counts for the whole question.</param>
    /// <param name="cancellationToken">Ends it early with what is known.</param>
    /// <exception cref="ArgumentException">The plan has no such gift, part or offcut, or the gift is made, or is not made, against what the question says.</exception>
    public static Task<WhyAnswer> AnswerAsync(Plan plan, WhyQuestion question, PlanLimits limits, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(question);
        ArgumentNullException.ThrowIfNull(limits);
        if (WhyFault.Of(plan, question) is { } fault)
        {
            throw new ArgumentException(fault, nameof(question));
        }

        return Task.Factory.StartNew(
            () => new Explainer(plan, limits, cancellationToken).Answer(question), CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);
    }

    private WhyAnswer Answer(WhyQuestion question)
    {
        var gift = problem.Gifts.FirstOrDefault(g => g.Gift.Label == question.Gift);
        if (gift is null)
        {
            // Its design has options that do not fit: the plan says so already.
            return new WhyAnswer { Question = question, CanBeOtherwise = false, IsProven = true, Reasons = plan.Unmade.First(u => u.Gift == question.Gift).Reasons };
        }

        return question.Kind == WhyKind.NotMade ? NotMade(question, gift) : Changed(question, gift);
    }

    private WhyAnswer Changed(WhyQuestion question, GiftDemand gift)
    {
        var glueUps = plan.GlueUps.Where(g => g.IsFor(question.Gift, question.Part)).ToArray();
        var (count, layers) = (glueUps.Length, glueUps.Max(g => g.Layers));
        var model = ModelOf(gift, now);
        var canBeAsked = question.Kind switch
        {
            WhyKind.Resawing => model.RequireResawn(gift.Index, question.Part, layers == 1),
            WhyKind.GlueUps => model.RequireGlueUps(gift.Index, question.Part, count > 1 ? 1 : 2, count > 1 ? count - 1 : int.MaxValue),
            _ => Without(model, gift, question),
        };
        model.Suggest(now);
        var otherwise = canBeAsked ? search.Best(model, Levels, Accept) : null;
        return new WhyAnswer
        {
            Question = question,
            CanBeOtherwise = otherwise is not null,
            IsProven = !canBeAsked || (search.IsProven && !leavesWoodOut),
            Costs = otherwise is null ? [] : Costs(otherwise),
            GlueUps = count,
            Layers = layers,
        };
    }

    private bool Without(PlanModel model, GiftDemand gift, WhyQuestion question)
    {
        model.RequireWithout(gift.Index, question.Part, problem.Offcuts.Index().First(o => o.Item.Label == question.Offcut).Index);
        return true;
    }

    private ImmutableArray<LevelCost> Costs(Placement otherwise) =>
        [.. Levels.Select(l => new LevelCost(l, now.ValueOf(l), otherwise.ValueOf(l))).Where(c => c.Now != c.Otherwise)];

    private WhyAnswer NotMade(WhyQuestion question, GiftDemand gift)
    {
        var answer = new WhyAnswer { Question = question, CanBeOtherwise = true, IsProven = true };
        if (IsPossibleIn(gift, now) is true)
        {
            return answer with { IsProven = !leavesWoodOut };
        }

        if (IsPossibleIn(gift, now.Without(problem, [.. problem.Gifts.Select(g => g.Index)])) is false && !leavesWoodOut)
        {
            return answer with { CanBeOtherwise = false, Reasons = ReasonsWithTheWholePile(gift) };
        }

        // Those it would be easiest to leave out come first.
        var inPlaceOf = ImmutableArray.CreateBuilder<string>();
        var isDone = true;
        foreach (var other in problem.Gifts.Where(g => now.Made[g.Index]).OrderBy(g => g.Weight))
        {
            if (!search.HasTime)
            {
                isDone = false;
                break;
            }

            var sharing = now.WithPartners(problem, [other.Index]);
            if (IsPossibleIn(gift, now.Without(problem, sharing), [.. sharing.Where(g => g != other.Index)]) is true)
            {
                inPlaceOf.Add(other.Gift.Label);
            }
        }

        return answer with { CanBeOtherwise = inPlaceOf.Count > 0, InPlaceOf = inPlaceOf.ToImmutable(), IsProven = isDone && search.IsProven && !leavesWoodOut };
    }

    private bool? IsPossibleIn(GiftDemand gift, Placement rest, params ImmutableArray<int> others) => search.IsPossible(ModelOf(gift, rest, others), Accept);

    private ImmutableArray<Reason> ReasonsWithTheWholePile(GiftDemand gift)
    {
        var nothing = PlanBuilder.Build(problem, now.Without(problem, [.. problem.Gifts.Select(g => g.Index)]), problem.Levels.ToDictionary(k => k, k => PlacementValues.TrivialBound(problem, k)));
        return nothing.Unmade.First(u => u.Gift == gift.Gift.Label).Reasons;
    }

    /// <summary>The gift, which must be made, with its wood and the wood the rest leaves; and others that share glue-ups with it or must be made anew beside it.</summary>
    private PlanModel ModelOf(GiftDemand gift, Placement rest, params ImmutableArray<int> others)
    {
        var used = rest.Segments.Select(s => problem.Patterns[s.Pattern].OffcutIndex).ToHashSet();
        var untouched = Enumerable.Range(0, problem.Offcuts.Length).Where(o => !used.Contains(o)).ToList();
        var scope = Scope.Of(problem, rest, [gift.Index, .. others], untouched);
        while (scope.SegmentCount(options) > MostSegments)
        {
            leavesWoodOut = true;
            untouched = [.. untouched.Where((_, i) => i % 2 == 0)];
            scope = Scope.Of(problem, rest, [gift.Index, .. others], untouched);
        }

        var model = new PlanModel(problem, options, scope);
        foreach (var made in scope.Gifts.Where(g => g == gift.Index || rest.Made[g] || others.Contains(g)))
        {
            model.RequireMade(made);
        }

        return model;
    }

    private int? Accept(Placement placement) => PlanBuilder.FindUnorderable(problem, placement);
}
