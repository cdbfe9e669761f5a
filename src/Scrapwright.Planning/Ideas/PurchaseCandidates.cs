using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Ideas;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Planning.Ideas;

/// <summary>
/// What might be bought: a board of each wood that is in the pile or wished for, in the yard sizes that what is missing asks for; one more of the longest clamps; two longer clamps.
/// Rods that are not on hand are bought in every plan, so they never hold a gift back.
/// </summary>
internal static class PurchaseCandidates
{
    // Rough boards as yards have them, in inches and millimetres: thickness, width, lengths. Common practice, no source.
    private static readonly ImmutableArray<Length> InchThicknesses = [Length.FromInches(1), Length.FromInches(3, 2), Length.FromInches(2)];
    private static readonly ImmutableArray<Length> MillimetreThicknesses = [Length.FromMillimetres(27), Length.FromMillimetres(40), Length.FromMillimetres(52)];
    private static readonly ImmutableArray<Length> InchLengths = [Length.FromInches(36), Length.FromInches(72)];
    private static readonly ImmutableArray<Length> MillimetreLengths = [Length.FromMillimetres(1000), Length.FromMillimetres(2000)];
    private static readonly ImmutableArray<Length> InchWidths = [Length.FromInches(6), Length.FromInches(8)];
    private static readonly ImmutableArray<Length> MillimetreWidths = [Length.FromMillimetres(150), Length.FromMillimetres(200)];
    private static readonly ImmutableArray<Length> InchReaches = [Length.FromInches(24), Length.FromInches(36), Length.FromInches(50)];
    private static readonly ImmutableArray<Length> MillimetreReaches = [Length.FromMillimetres(600), Length.FromMillimetres(1000), Length.FromMillimetres(1250)];

    /// <summary>The candidates, those that answer to what is missing first.</summary>
    /// <param name="request">The workshop with the gifts that are wanted.</param>
    /// <param name="unmade">Those that are not made.</param>
    internal static ImmutableArray<Purchase> For(PlanRequest request, ImmutableArray<UnmadeGift> unmade)
    {
        var isBeyondShop = unmade.Any(u => u.Reasons.Any(r => r is Reason.BeyondShop));
        Purchase[] boards = [.. Boards(request, unmade)];
        Purchase[] clamps = [.. Clamps(request.Shop)];
        return isBeyondShop ? [.. clamps, .. boards] : [.. boards, .. clamps];
    }

    private static IEnumerable<Purchase> Boards(PlanRequest request, ImmutableArray<UnmadeGift> unmade)
    {
        var sizes = SizesFor(request.Shop, unmade).Distinct().ToArray();
        var label = new LabelMaker(request.Pile.SelectMany(PileLabels.Claimed));
        foreach (var (length, width, thickness) in sizes)
        {
            foreach (var species in Woods(request, unmade))
            {
                var board = new Offcut { Label = "new", Species = species, Length = length, Width = width, Thickness = thickness };
                yield return new Purchase { Board = board with { Label = label.Next(board) } };
            }
        }
    }

    /// <summary>Woods wished for by what is not made come first, then those of the pile, the commonest first.</summary>
    private static IEnumerable<string> Woods(PlanRequest request, ImmutableArray<UnmadeGift> unmade)
    {
        var labels = unmade.Select(u => u.Gift).ToHashSet(StringComparer.Ordinal);
        var wished = request.DeriveDesigns().Where(d => labels.Contains(d.Gift.Label)).Select(d => d.Outcome).OfType<DesignOutcome.Derived>()
            .SelectMany(d => d.Product.Parts).SelectMany(p => p.Wish?.Species ?? p.Species);
        var there = request.Pile.GroupBy(o => o.Species).OrderByDescending(g => g.Sum(o => o.Count)).ThenBy(g => g.Key, StringComparer.Ordinal).Select(g => g.Key);
        return wished.Concat(there).Where(s => SpeciesTable.FindKey(s) is not null).Distinct();
    }

    private static IEnumerable<(Length Length, Length Width, Length Thickness)> SizesFor(Shop shop, ImmutableArray<UnmadeGift> unmade)
    {
        var isInch = shop.Unit == LengthUnit.Inch;
        var (lengths, widths, thicknesses) = isInch ? (InchLengths, InchWidths, InchThicknesses) : (MillimetreLengths, MillimetreWidths, MillimetreThicknesses);
        yield return (lengths[0], widths[0], thicknesses[0]);
        foreach (var (length, width, thickness) in unmade.SelectMany(u => u.Reasons).Select(Need).OfType<(Length Length, Length Width, Length Thickness)>())
        {
            if (lengths.Any(l => l >= length) && widths.Any(w => w >= width) && thicknesses.Any(t => t >= thickness))
            {
                yield return (lengths.First(l => l >= length), widths.First(w => w >= width), thicknesses.First(t => t >= thickness));
            }
        }
    }

    private static (Length Length, Length Width, Length Thickness)? Need(Reason reason) => reason switch
    {
        Reason.MissingBoard b => (b.Length, b.Width, b.Thickness),
        Reason.MissingStrips s => (s.Length, s.Width, s.Thickness),
        _ => null,
    };

    private static IEnumerable<Purchase> Clamps(Shop shop)
    {
        var longest = shop.Clamps.Where(c => c.Count > 0).MaxBy(c => c.Reach);
        if (longest is not null)
        {
            yield return new Purchase { Clamps = longest with { Count = 1 } };
        }

        // A glue-up takes at least two.
        foreach (var reach in (shop.Unit == LengthUnit.Inch ? InchReaches : MillimetreReaches).Where(r => longest is null || r > longest.Reach).Take(1))
        {
            yield return new Purchase { Clamps = new ClampKind("long bar clamp", reach, 2) };
        }
    }
}
