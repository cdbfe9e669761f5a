using System.Collections.Immutable;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Ideas;
using Scrapwright.Planning.Ideas;

namespace Scrapwright.Planning;

/// <summary>Says what else a pile gives, where an offcut serves best and what is worth buying. Every answer comes of planning; none is kept ready.</summary>
public sealed class IdeaMaker
{
    private readonly PlanRequest workshop;
    private readonly IdeasQuestion question;
    private readonly IdeaBudget budget;
    private readonly IProgress<IdeasProgress>? progress;

    private IdeaMaker(PlanRequest workshop, IdeasQuestion question, IdeaBudget budget, IProgress<IdeasProgress>? progress) =>
        (this.workshop, this.question, this.budget, this.progress) = (workshop, question, budget, progress);

    /// <summary>Answers one question. The work is done on threads of its own.</summary>
    /// <param name="workshop">The workshop.</param>
    /// <param name="plan">Its latest plan, which holds for the request it was made from; null when there is none. One of an older request is begun from.</param>
    /// <param name="question">The question.</param>
    /// <param name="limits">How to search; the time is the question's. Deterministic searches take the question's seconds as work for each plan.</param>
    /// <param name="progress">Told of everything that was tried; may be null.</param>
    /// <param name="cancellationToken">Ends it early; what was not tried is said.</param>
    /// <exception cref="ArgumentException">The workshop cannot be asked that, see <see cref="IdeasFault"/>.</exception>
    public static Task<IdeasAnswer> AnswerAsync(
        PlanRequest workshop, Plan? plan, IdeasQuestion question, PlanLimits limits, IProgress<IdeasProgress>? progress = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(workshop);
        ArgumentNullException.ThrowIfNull(question);
        ArgumentNullException.ThrowIfNull(limits);
        if (IdeasFault.Of(workshop, question) is { } fault)
        {
            throw new ArgumentException(fault, nameof(question));
        }

        var maker = new IdeaMaker(workshop, question, new IdeaBudget(limits with { Seconds = question.Seconds }, cancellationToken), progress);
        return Task.Run(() => maker.AnswerAsync(plan), CancellationToken.None);
    }

    private async Task<IdeasAnswer> AnswerAsync(Plan? plan)
    {
        // A plan of the list takes a quarter of the time when there is none yet.
        var start = await IdeaBase.MakeAsync(workshop, plan, question.BesideGifts, budget.Share(4), budget.Token);
        var answer = new IdeasAnswer { Question = question, Planned = start.Planned, Unmade = [.. start.Unmade.Select(u => u.Gift)] };
        return question.Kind switch
        {
            IdeasKind.Gifts => await ProposeAsync(start, answer),
            IdeasKind.Offcut => new OffcutSearch(start, budget, question.Offcut, progress).Answer(answer),
            IdeasKind.Purchase => await new PurchaseSearch(start, budget, progress).AnswerAsync(answer),
            _ => throw new ArgumentOutOfRangeException(nameof(plan), question.Kind, "Unknown question."),
        };
    }

    private async Task<IdeasAnswer> ProposeAsync(IdeaBase start, IdeasAnswer answer)
    {
        var search = new ProposalSearch(start, budget);
        var all = IdeaVariants.For(workshop);
        bool IsHad(IdeaVariant variant) => question.Had.Any(key => GiftYears.IsSame(key, variant.Design));
        var variants = all.Where(v => !IsHad(v)).ToImmutableArray();
        var (total, tried) = (variants.Length + 2, 0);
        var found = new List<FoundProposal>();
        var impossible = ImmutableArray.CreateBuilder<string>();
        var notTried = ImmutableArray.CreateBuilder<string>();
        await TryAllAsync(variants.Where(v => v.Step <= IdeaStep.OtherChoice));
        if (found.Count > 1 || !budget.HasTime)
        {
            ImmutableArray<IdeaVariant> kinds = [.. found.Select(f => f.Variant).OfType<IdeaVariant>()];
            var best = found.MaxBy(f => f.Proposal.InGifts);
            await MixAsync("several kinds at once", () => search.FindAllKindsAsync(kinds, budget.Share(total - tried)));
            await MixAsync("one of each and many of the best", () => search.FindOneEachAndManyAsync(kinds, best!.Variant!, best.Proposal.Count, budget.Share(total - tried)));
        }

        await TryAllAsync(variants.Where(v => v.Step > IdeaStep.OtherChoice));
        var isHadBefore = found.Count == 0 && variants.Length < all.Length;
        if (isHadBefore)
        {
            (total, tried) = (all.Length - variants.Length, 0);
            await TryAllAsync(all.Where(IsHad));
        }

        return answer with
        {
            Proposals = IdeaRanks.Ranked(found.Select(f => For(question.Recipient, f.Proposal))),
            IsHadBefore = isHadBefore && found.Count > 0,
            Impossible = impossible.ToImmutable(),
            NotTried = notTried.ToImmutable(),
        };

        async Task TryAllAsync(IEnumerable<IdeaVariant> some)
        {
            foreach (var variant in some)
            {
                if (!budget.HasTime)
                {
                    notTried.Add(variant.Title);
                    continue;
                }

                var (proposal, isImpossible) = await search.FindLargestAsync(variant, budget.Share(total - tried));
                tried++;
                Tell(variant.Title, proposal);
                if (isImpossible)
                {
                    impossible.Add(variant.Title);
                }
                else if (proposal is null)
                {
                    notTried.Add(variant.Title);
                }
            }
        }

        async Task MixAsync(string title, Func<Task<FoundProposal?>> find)
        {
            if (budget.HasTime)
            {
                var proposal = await find();
                tried++;
                Tell(title, proposal);
            }
            else
            {
                notTried.Add(title);
            }
        }

        void Tell(string title, FoundProposal? proposal)
        {
            if (proposal is not null)
            {
                found.Add(proposal);
            }

            progress?.Report(new IdeasProgress(tried, total, title, proposal?.Proposal, proposal?.Plan));
        }
    }

    private static Proposal For(string recipient, Proposal proposal) =>
        recipient.Length == 0 ? proposal : proposal with { Gifts = [.. proposal.Gifts.Select(gift => gift with { Recipient = recipient })] };
}
