using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Fits;

/// <summary>The fits of everything a plan makes, with the strips that are really in it.</summary>
public static class PlanFits
{
    /// <summary>All fits of the made gifts, in the plan's order. Fitted in the month a gift is due; lives in the gift's climate.</summary>
    public static ImmutableArray<PlanFit> Of(Plan plan) => Of(PlanIndex.Of(plan));

    /// <summary>The same, for a plan that is indexed already.</summary>
    /// <param name="index">The plan with its designs.</param>
    public static ImmutableArray<PlanFit> Of(PlanIndex index)
    {
        ArgumentNullException.ThrowIfNull(index);
        return Of(new PlanWood(index));
    }

    internal static ImmutableArray<PlanFit> Of(PlanWood wood) =>
    [
        .. from made in wood.Plan.Made
           let product = wood.Product(made.Gift)
           where product is not null
           from fit in product.Fits
           select new PlanFit(made.Gift, fit, Season(wood, made.Gift, fit)),
    ];

    private static SeasonFit Season(PlanWood wood, string gift, Fit fit)
    {
        var notes = ImmutableArray.CreateBuilder<string>();
        var held = fit.HeldFrom switch { HeldFrom.SameGift => gift, HeldFrom.OtherGift => fit.HeldGift, _ => "" };
        var sides = new FitSides(
            [.. fit.Holder.Select(e => Term(wood, gift, e, turns: false, notes))],
            [.. fit.Held.Select(e => Term(wood, held, e, fit.HeldTurns, notes))]);
        var season = new FitYear(sides, wood.Here, wood.Month(gift), wood.Home(gift), fit.Least, fit.Most).Work(fit.Option, FitWords.RuleMark(wood.Shop), FitWords.FineMark(wood.Shop));
        return season with { Notes = [.. FitNotes.OfYear(season, wood.Gift(gift)), .. notes.Distinct()] };
    }

    private static MovingTerm Term(PlanWood wood, string gift, Extent extent, bool turns, ImmutableArray<string>.Builder notes)
    {
        var still = Enumerable.Repeat(MovingBody.Still, turns ? extent.Copies : 0);
        var bodies = wood.Copies(gift, extent.Part).Select(p => wood.Body(p, extent.Direction)).Where(b => !b.Woods.IsEmpty).ToImmutableArray();
        var repeats = bodies.IsEmpty;
        if (repeats)
        {
            var guesses = Guesses(wood, gift, extent.Part);
            bodies = [.. guesses.Select(s => new MovingBody(extent.Direction, [new(s, RingOrientation.Unknown, extent.Direction, extent.Size.Abs())]))];
            notes.Add(FitNotes.OfGuess(extent.Part, guesses));
        }

        if (extent.Direction != GrainDirection.Along) notes.AddRange(FitNotes.OfWoods(bodies.SelectMany(b => b.Woods)));
        return new(extent.Size, extent.Copies, [.. bodies, .. still], repeats);
    }

    // The wood of what another gift or nobody makes: the species wished for it, or any of the pile.
    private static ImmutableArray<string> Guesses(PlanWood wood, string gift, string part)
    {
        var wished = wood.Product(gift)?.Parts.FirstOrDefault(p => p.Key == part) is { } known ? known.Wish?.Species ?? known.Species : [];
        if (!wished.IsDefaultOrEmpty) return wished;
        var pile = wood.PileSpecies;
        return pile.IsEmpty ? [.. SpeciesTable.All.Select(s => s.Key)] : pile;
    }
}
