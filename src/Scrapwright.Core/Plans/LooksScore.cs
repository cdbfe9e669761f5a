using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Pile;

namespace Scrapwright.Core.Plans;

/// <summary>Points for variety inside circles and sets, wished species and patterns that the strips make.</summary>
internal sealed class LooksScore(
    ImmutableArray<GiftDesign> designs,
    HashSet<string> made,
    ImmutableArray<GlueUp> glueUps,
    ImmutableArray<BoardRun> boards,
    Dictionary<string, Offcut> offcuts)
{
    /// <summary>All points together.</summary>
    public long Points()
    {
        var gifts = designs.Where(d => made.Contains(d.Gift.Label) && d.Outcome is DesignOutcome.Derived)
            .Select(d => (d.Gift, ((DesignOutcome.Derived)d.Outcome).Product)).ToArray();
        long points = 0;
        for (var i = 0; i < gifts.Length; i++)
        {
            var (gift, product) = gifts[i];
            points += gifts.Skip(i + 1).Count(other => gift.Circle.Length > 0 && string.Equals(other.Gift.Circle, gift.Circle, StringComparison.OrdinalIgnoreCase) && Differ(gifts[i], other));
            points += product.Parts.Sum(part => Wishes(gift.Label, product, part) + PiecesThatDiffer(gift.Label, part));
            points += product.Parts.Count(part => part.Wish is { } wish && StripPatterns.IsEarned(wish.Pattern)
                && glueUps.Where(g => g.IsFor(gift.Label, part.Key))
                    .All(g => StripPatterns.IsMet(wish.Pattern, g.Strips.Select(s => (SpeciesOfOffcut(s.Offcut), s.Width)), part.Width, Sisters.PlacesOf(g.Strips))));
        }

        return points;
    }

    /// <summary>Pairs of panels with other woods, where each piece of a set shall be different.</summary>
    private int PiecesThatDiffer(string gift, Part part)
    {
        if (part.Kind != PartKind.Panel || part.Wish?.Panels != SetPanels.Each)
        {
            return 0;
        }

        var woods = glueUps.Where(g => g.IsFor(gift, part.Key)).Select(g => Species([g], [])).ToArray();
        return woods.Select((one, i) => woods.Skip(i + 1).Count(other => !one.SetEquals(other))).Sum();
    }

    private bool Differ((Gift Gift, Product Product) one, (Gift Gift, Product Product) other) =>
        one.Product.Family != other.Product.Family || !SpeciesOf(one.Gift.Label).SetEquals(SpeciesOf(other.Gift.Label));

    private HashSet<string> SpeciesOf(string gift) =>
        Species(glueUps.Where(g => g.IsFor(gift)), boards.Where(b => b.Gift == gift));

    /// <summary>A point for each wished species that is there, one off for each other; nothing without wishes.</summary>
    private int Wishes(string gift, Product product, Part part)
    {
        var present = Species(
            glueUps.Where(g => g.IsFor(gift, part.Key)),
            boards.Where(b => b.Gift == gift && product.Runs.Any(r => r.Mark == b.Run && r.Members.Any(m => m.Part == part.Key))));
        var wished = part.Kind == PartKind.Panel ? part.Wish?.Species ?? [] : part.Species;
        if (wished.IsEmpty)
        {
            return 0;
        }

        var met = present.Count(wished.Contains);
        return met - (present.Count - met);
    }

    private HashSet<string> Species(IEnumerable<GlueUp> panels, IEnumerable<BoardRun> solid) =>
        panels.SelectMany(g => g.Strips.Select(s => s.Offcut)).Concat(solid.Select(b => b.Offcut)).Select(SpeciesOfOffcut)
            .ToHashSet(StringComparer.Ordinal);

    private string SpeciesOfOffcut(string label) => offcuts.TryGetValue(label, out var offcut) ? offcut.Species : "";
}
