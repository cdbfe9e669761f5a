using System.Collections.Immutable;
using System.Globalization;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;

namespace Scrapwright.Planning.Calendar.Advice;

/// <summary>Requests in which a late gift is made to another design, or with fewer pieces: the same pile is planned again for it.</summary>
internal sealed class OtherDesigns(CalendarRequest request)
{
    // Each takes a plan of its own, so only so many are tried: our own choice.
    private const int MostTried = 4;

    // A set of one is none.
    private const int FewestPieces = 2;

    private readonly PlanRequest plan = request.Plan.Request;
    private readonly ImmutableArray<Design> designs = DesignCatalogue.With(request.Plan.Request.Designs);

    /// <summary>Those of late gifts, the least important gifts first.</summary>
    internal IEnumerable<CalendarVariant> For(IEnumerable<Gift> late) =>
        late.OrderByDescending(g => g.Priority).SelectMany(g => Fewer(g).Concat(Others(g))).Where(v => IsPossible(v.Replan!)).Take(MostTried);

    private IEnumerable<CalendarVariant> Fewer(Gift gift)
    {
        if (Family(gift.Design) is not { } family || family.Parameters.FirstOrDefault(p => p.Key == SquareSet.Count) is not { } parameter) yield break;
        // What holds another gift's squares has none of its own to leave out.
        if (Option(gift, SquareSet.Holds).Length > 0) yield break;
        if (!int.TryParse(Option(gift, SquareSet.Count, parameter.Default), NumberStyles.None, CultureInfo.InvariantCulture, out var now) || now / 2 < FewestPieces) yield break;
        var fewer = now / 2;
        yield return Variant(
            gift, gift with { Options = gift.Options.SetItem(SquareSet.Count, fewer.ToString(CultureInfo.InvariantCulture)) },
            $"{fewer} pieces instead of {now} in {gift.Label}", $"Would {fewer} pieces do in {gift.Label} instead of {now}");
    }

    private IEnumerable<CalendarVariant> Others(Gift gift)
    {
        if (Family(gift.Design) is not { } family || designs.FirstOrDefault(d => d.Key == gift.Design) is not { } own) yield break;
        string[] purpose = [.. new[] { SquareSet.Holds, SquareSet.WithSquares }.Where(key => Option(gift, key) is not ("" or "no"))];
        foreach (var other in designs.Where(d => d.Key != gift.Design))
        {
            // Another thing for the same purpose: what holds squares is not replaced by squares.
            if (DesignCatalogue.FindFamily(other.Family) is not { } known || known == family || purpose.Length == 0 || purpose.Any(key => known.Parameters.All(p => p.Key != key))) continue;
            var options = gift.Options.Where(o => known.Parameters.Any(p => p.Key == o.Key)).ToImmutableSortedDictionary(StringComparer.Ordinal);
            yield return Variant(
                gift, gift with { Design = other.Key, Options = options },
                $"{FirstLetter.Small(other.Title)} instead of {FirstLetter.Small(own.Title)} for {gift.Label}", $"Would a {FirstLetter.Small(other.Title)} do for {gift.Label} instead of a {FirstLetter.Small(own.Title)}");
        }
    }

    private CalendarVariant Variant(Gift gift, Gift changed, string what, string question) =>
        new(OtherwiseKind.OtherDesign, what, question, request) { Replan = plan with { Gifts = plan.Gifts.Replace(gift, changed) } };

    private static bool IsPossible(PlanRequest changed) => changed.DeriveDesigns().All(d => d.Outcome is DesignOutcome.Derived);

    private DesignFamily? Family(string design) => designs.FirstOrDefault(d => d.Key == design) is { } known ? DesignCatalogue.FindFamily(known.Family) : null;

    private string Option(Gift gift, string key, string otherwise = "") =>
        gift.Options.GetValueOrDefault(key) ?? designs.FirstOrDefault(d => d.Key == gift.Design)?.Options.GetValueOrDefault(key) ?? otherwise;
}
