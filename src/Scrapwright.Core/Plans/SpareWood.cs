using System.Collections.Immutable;
using System.Numerics;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Plans;

/// <summary>One leftover as wood for strips: what it would give, milled the best of the three ways (whole, rip first, crosscut first).</summary>
internal sealed record SpareWood(Species Species, Offcut Offcut, Piece Piece, ImmutableArray<Length> Runs)
{
    /// <summary>Its volume. [pm³]</summary>
    public BigInteger Bulk => (BigInteger)Piece.Length.Picometres * Piece.Width.Picometres * Piece.Thickness.Picometres;

    private bool IsRaw => Piece.Thickness == Offcut.Thickness;

    /// <summary>The leftovers that go back to the pile, come from one offcut and are not kept for later, in their order.</summary>
    public static List<SpareWood> From(ImmutableArray<Leftover> leftovers, PlanRequest request, DoneWork done)
    {
        var saved = request.Choices.SavedIn(request.Pile);
        var offcuts = PlanStock.ByLabel(request);
        var wood = new List<SpareWood>();
        foreach (var leftover in leftovers.Where(l => l.Place == LeftoverPlace.Pile))
        {
            if (leftover.Piece.Lanes is [var lane] && !saved.Contains(lane.Offcut) && !done.LeftAlone.Contains(lane.Offcut)
                && offcuts.FindWood(lane.Offcut, request.Shop) is { } offcut
                && leftover.Piece.Length <= offcut.Length && leftover.Piece.Width <= offcut.Width
                && SpeciesTable.FindKey(offcut.Species) is { } species)
            {
                wood.Add(new SpareWood(species, offcut, leftover.Piece, RunsOf(leftover.Piece, offcut, request.Shop.TableSaw.Kerf)));
            }
        }

        return wood;
    }

    /// <summary>How many strips of the given rough size it gives that are thick enough once milled.</summary>
    public long Count(Length length, Length width, Func<Length, Length> thickness, Shop shop)
    {
        if (length > Piece.Length || width > Piece.Width || !IsThickEnough(length, width, thickness, shop))
        {
            return 0;
        }

        var kerf = shop.TableSaw.Kerf;
        var across = CrosscutYield.Count(Piece.Width, width, kerf);
        return across * Runs.Sum(run => CrosscutYield.Count(run, length, kerf));
    }

    /// <summary>Least rough thickness of flat rough wood whose strips are thick enough, rounded up to a mark of the rule.</summary>
    public static Length RoughThickness(Func<Length, Length> thickness, Shop shop)
    {
        return ReadableSize.Up(thickness(StripMilling.RoughSpread(shop)) + shop.Allowances.FaceJoint.Mean + shop.Allowances.FacePlane.Mean, shop.Unit);
    }

    private bool IsThickEnough(Length length, Length width, Func<Length, Length> thickness, Shop shop)
    {
        if (!IsRaw)
        {
            return Piece.Thickness >= thickness(StripMilling.Thickness(Offcut, Piece.Length, Piece.Width, shop).Spread);
        }

        foreach (var (cutLength, cutWidth) in (ReadOnlySpan<(Length, Length)>)
            [(Piece.Length, Piece.Width), (Piece.Length, width), (length, Piece.Width)])
        {
            var ladder = StripMilling.Thickness(Offcut, cutLength, cutWidth, shop);
            if (ladder.End >= thickness(ladder.Spread))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Stretches between defects; a piece that was crosscut before has none.</summary>
    private static ImmutableArray<Length> RunsOf(Piece piece, Offcut offcut, Length kerf)
    {
        if (!offcut.ToCutRound().Any() || piece.Length < offcut.Length)
        {
            return [piece.Length];
        }

        var runs = ImmutableArray.CreateBuilder<Length>();
        var from = Length.Zero;
        foreach (var defect in offcut.ToCutRound().OrderBy(d => d.From))
        {
            runs.Add(defect.From - from - kerf);
            from = Length.Max(from, defect.To + kerf);
        }

        runs.Add(piece.Length - from);
        return [.. runs.Where(r => r.IsPositive)];
    }
}
