using Scrapwright.Core.Calendar.Worth;
using Scrapwright.Core.Plans;

namespace Scrapwright.Cli.Output;

/// <summary>Making against buying as lines of text.</summary>
internal static class WorthText
{
    /// <summary>All of it.</summary>
    internal static IEnumerable<string> Lines(WorthAnswer answer, Plan plan)
    {
        var words = new WorthWords(answer.HourWorth);
        yield return answer.HourWorth is { } hour
            ? $"{plan.Request.Workshop}: make or buy, at {words.Money(hour.Amount)} an hour of your time. Figures, no decree."
            : $"{plan.Request.Workshop}: make or buy. Nobody said what an hour is worth, so only minutes are compared.";
        if (!answer.Jigs.IsEmpty) yield return "Jigs (minutes are estimates; yours go into jigs.csv):";
        foreach (var jig in answer.Jigs) yield return $"  {jig.Jig.Name}: {words.Figures(jig)}: {WorthWords.Verdict(jig)}{(WorthWords.Pays(jig) is { Length: > 0 } pays ? $"; {pays}" : "")}";
        if (!answer.Things.IsEmpty) yield return "Gifts and parts:";
        foreach (var thing in answer.Things)
        {
            var verdict = words.Verdict(thing);
            yield return $"  {WorthWords.Name(thing)}: {words.Figures(thing)}{(verdict.Length > 0 ? $": {verdict}" : "")}";
            if (thing.Price is not null) yield return $"    bought ones must fit: {WorthWords.Sizes(thing, size => size.ToExactText(plan.Request.Shop.Unit))}";
        }

        if (!answer.Items.IsEmpty) yield return $"On the shopping list, {words.Money(answer.Items.Sum(i => i.Cost))} in all of what has a price:";
        foreach (var item in answer.Items) yield return $"  {PlanText.Shopping(item.Item, plan.Request.Shop)}: {words.Figures(item)}";
        if (!answer.Unmatched.IsEmpty) yield return $"Prices of nothing that is left to make or buy in this plan: {string.Join("; ", answer.Unmatched.Select(p => $"{p.Kind.ToString().ToLowerInvariant()} {p.Name}"))}.";
    }
}
