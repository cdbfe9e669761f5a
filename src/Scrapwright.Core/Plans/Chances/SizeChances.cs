namespace Scrapwright.Core.Plans.Chances;

/// <summary>Chances that one panel, or the strip of one run, holds its sizes; each 0 to 1.</summary>
/// <param name="Width">That every layer holds its width.</param>
/// <param name="Thickness">That every layer holds its thickness.</param>
/// <param name="Length">That both ends of every layer can be squared.</param>
public sealed record SizeChances(double Width, double Thickness, double Length)
{
    /// <summary>That all three hold: edges, faces and ends are worked apart, so nothing is shared between them.</summary>
    public double Whole => Width * Thickness * Length;

    /// <summary>The whole in thousandths, rounded down.</summary>
    public int PerMille => ToPerMille(Whole);

    /// <summary>A chance in thousandths, rounded down; a hair below a thousandth counts as that thousandth.</summary>
    internal static int ToPerMille(double share) => (int)Math.Floor((share * 1000) + 1e-6);
}
