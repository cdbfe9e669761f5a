using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Finishing;

/// <summary>Areas of parts, all copies together: what is sanded, finished and glued when a gift is put together.</summary>
internal static class PartSurface
{
    /// <summary>Both faces, edges and ends; a rod's round side and ends. Holes and laps are left out.</summary>
    internal static Area Of(Part part) => part.Kind == PartKind.Rod
        ? FromSquareMillimetres(((Math.PI * part.Width.Millimetres * part.Length.Millimetres) + (Math.PI / 2 * Square(part.Width.Millimetres))) * part.Count)
        : (Area.Of(part.Length, part.Width) + Area.Of(part.Length, part.Thickness) + Area.Of(part.Width, part.Thickness)) * (2L * part.Count);

    /// <summary>The parts that one kind of step of a product works on.</summary>
    internal static Area Of(Product product, Operation operation)
    {
        var keys = product.Assembly.Where(s => s.Operation == operation).SelectMany(s => s.Parts).ToHashSet(StringComparer.Ordinal);
        return Area.Sum(product.Parts.Where(p => keys.Contains(p.Key)).Select(Of));
    }

    /// <summary>
    /// What is glued when a product is assembled, each face once: mitred ends, walls of holes for rods, floor and cheeks of laps. Estimate: not every hole and lap is glued.
    /// </summary>
    internal static Area Glued(Product product) =>
        product.Assembly.Any(s => s.Operation == Operation.Assemble) ? Area.Sum(product.Parts.Select(Joints)) : Area.Zero;

    private static Area Joints(Part part)
    {
        double squareMm = 0;
        foreach (var hole in part.Holes) squareMm += Math.PI * hole.Diameter.Millimetres * hole.Depth.Millimetres;
        foreach (var notch in part.Notches)
        {
            var across = notch.AcrossFace ? part.Width.Millimetres : part.Thickness.Millimetres;
            squareMm += (notch.Opening.Millimetres + (2 * notch.Depth.Millimetres)) * across;
        }

        var ends = part.Mitres switch { MitredEnds.None => 0, MitredEnds.Both => 2, _ => 1 };
        squareMm += ends * Math.Sqrt(2) * part.Thickness.Millimetres * part.Width.Millimetres;
        return FromSquareMillimetres(squareMm * part.Count);
    }

    // The one place where these areas come back from physics. Beyond a square kilometre nothing is counted: our own choice; 10¹⁸ pm² a square millimetre by definition.
    private static Area FromSquareMillimetres(double squareMm) => Area.FromSquarePicometres((Int128)(Math.Min(squareMm, 1e12) * 1e18));

    private static double Square(double x) => x * x;
}
