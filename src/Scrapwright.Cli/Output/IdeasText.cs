using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Ideas;

namespace Scrapwright.Cli.Output;

/// <summary>Ideas in plain lines.</summary>
internal static class IdeasText
{
    /// <summary>Uses of an offcut that are told in full.</summary>
    private const int MostUses = 3;

    internal static IEnumerable<string> Lines(IdeasAnswer answer, PlanRequest workshop)
    {
        yield return $"{workshop.Workshop}: {Subject(answer)}";
        foreach (var line in Proposals(answer, workshop).Concat(Uses(answer, workshop)).Concat(Purchases(answer, workshop))) yield return line;
        if (!answer.Impossible.IsEmpty) yield return $"Cannot be made, not even once: {string.Join("; ", answer.Impossible)}.";
        var titles = DesignCatalogue.With(workshop.Designs).Where(d => answer.Question.Had.Any(key => GiftYears.IsSame(key, d.Key))).Select(d => d.Title.ToLowerInvariant());
        if (IdeaWords.Had(answer, titles) is { Length: > 0 } had) yield return had;
        if (IdeaWords.Nothing(answer, workshop.Shop) is { Length: > 0 } nothing) yield return nothing;
        if (IdeaWords.NotTried(answer) is { Length: > 0 } open) yield return open;
    }

    private static string Subject(IdeasAnswer answer) => answer.Question.Kind switch
    {
        IdeasKind.Offcut => $"where {answer.Question.Offcut} serves best{Beside(answer)}.",
        IdeasKind.Purchase => answer.Unmade.IsEmpty ? $"what to buy{Beside(answer)}." : $"what to buy for what is not made: {string.Join("; ", answer.Unmade)}.",
        _ => $"what the pile gives{Beside(answer)}.",
    };

    private static string Beside(IdeasAnswer answer) => answer.Planned.IsEmpty ? "" : $" beside {PlanText.Count(answer.Planned.Length, "gift")} on the list";

    private static IEnumerable<string> Proposals(IdeasAnswer answer, PlanRequest workshop)
    {
        if (!answer.Proposals.IsEmpty) yield return IdeaRanks.ProposalRule;
        foreach (var (place, proposal) in answer.Proposals.Index())
        {
            yield return $"{place + 1,3}. {proposal.Title}: {IdeaWords.Number(proposal)}";
            yield return $"     {IdeaWords.Takes(proposal, workshop.Shop)} {IdeaWords.UsedUp(proposal)}";
        }
    }

    private static IEnumerable<string> Uses(IdeasAnswer answer, PlanRequest workshop)
    {
        if (!answer.Uses.IsEmpty) yield return IdeaRanks.UseRule;
        foreach (var (place, use) in answer.Uses.Take(MostUses).Index())
        {
            yield return $"{place + 1,3}. {IdeaWords.Name(use)}";
            yield return $"     {IdeaWords.Say(use, workshop.Shop)}";
        }

        if (answer.Uses.Length > MostUses) yield return $"Also: {string.Join("; ", answer.Uses.Skip(MostUses).Select(IdeaWords.Name))}.";
    }

    private static IEnumerable<string> Purchases(IdeasAnswer answer, PlanRequest workshop)
    {
        var useful = answer.Purchases.Where(p => !p.Unlocks.IsEmpty).ToArray();
        if (useful.Length > 0) yield return IdeaRanks.PurchaseRule;
        foreach (var (place, purchase) in useful.Index())
        {
            yield return $"{place + 1,3}. {IdeaWords.NameOf(purchase, workshop.Shop)}: {IdeaWords.Say(purchase)}";
        }

        var useless = answer.Purchases.Where(p => p.Unlocks.IsEmpty).Select(p => IdeaWords.NameOf(p, workshop.Shop)).ToArray();
        if (useless.Length > 0) yield return $"Tried, and no more can be made with it: {string.Join("; ", useless)}.";
    }
}
