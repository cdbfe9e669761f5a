using System.Collections.Immutable;
using Scrapwright.Client.Api;
using Scrapwright.Client.Shell;
using Scrapwright.Core.Plans.Ideas;

namespace Scrapwright.Client.Ideas;

/// <summary>The latest question for ideas and its answer. Outlives page changes: an answer takes a while.</summary>
public sealed class IdeaBoard(Server server, Workshop workshop)
{
    private (ImmutableArray<OffcutRow> Pile, ImmutableArray<GiftRow> Gifts) asked;

    /// <summary>Told when something here changes.</summary>
    public event Action? Changed;

    /// <summary>True while the server works on an answer.</summary>
    public bool IsAsking { get; private set; }

    /// <summary>The latest answer; null when there is none.</summary>
    public IdeasAnswer? Answer { get; private set; }

    /// <summary>Why the latest question was not answered; null when it was.</summary>
    public ApiProblem? Problem { get; private set; }

    /// <summary>True when pile or gifts have changed since the question was asked.</summary>
    public bool IsStale => Answer is not null && (workshop.Pile != asked.Pile || workshop.Gifts != asked.Gifts);

    /// <summary>Asks.</summary>
    public async Task AskAsync(IdeasQuestion question)
    {
        (IsAsking, IsEnding, Problem, asked) = (true, false, null, (workshop.Pile, workshop.Gifts));
        Changed?.Invoke();
        var answer = await server.PostAsync<IdeasAnswer>(ApiRoutes.Ideas, question);
        (IsAsking, Problem, Answer) = (false, answer.Problem, answer is Answer<IdeasAnswer>.Given given ? given.Value : null);
        Changed?.Invoke();
    }

    /// <summary>True once the question is being ended.</summary>
    public bool IsEnding { get; private set; }

    /// <summary>Ends the question: it is answered with what is known.</summary>
    public async Task EndAsync()
    {
        IsEnding = true;
        Changed?.Invoke();
        await server.EndAsync(ApiRoutes.IdeasEnd, () => IsAsking);
    }

    /// <summary>Puts gifts on the list, each with a label that is still free.</summary>
    /// <returns>The labels of those added, and what went wrong; null when nothing did.</returns>
    public async Task<(ImmutableArray<string> Labels, ApiProblem? Problem)> AddAsync(IEnumerable<Core.Gifts.Gift> gifts)
    {
        var labels = new IdeaLabels(workshop.Gifts.Select(g => g.Gift.Label));
        var added = ImmutableArray.CreateBuilder<string>();
        foreach (var gift in gifts)
        {
            var answer = await workshop.AddAsync(gift with { Label = labels.Next(gift.Design) });
            if (answer is not Answer<GiftRow>.Given given)
            {
                return (added.ToImmutable(), answer.Problem);
            }

            added.Add(given.Value.Gift.Label);
        }

        return (added.ToImmutable(), null);
    }
}
