namespace Scrapwright.Core.Wood;

/// <summary>Where one value of a species comes from.</summary>
/// <param name="Key">Key into docs/references.md.</param>
/// <param name="Place">Table, page or row in that source.</param>
/// <param name="Confidence">How sure the value is.</param>
public sealed record ValueSource(string Key, string Place, Confidence Confidence)
{
    /// <summary>The source in one line, as on a screen: key, place, and how sure unless it was read in print.</summary>
    public override string ToString() => Confidence == Confidence.Printed
        ? $"{Key}, {Place}"
        : $"{Key}, {Place} ({Words(Confidence)})";

    private static string Words(Confidence confidence) => confidence switch
    {
        Confidence.Derived => "derived",
        Confidence.DerivedCheck => "from memory, checked",
        Confidence.FromMemory => "from memory",
        Confidence.Estimate => "estimate",
        _ => "printed",
    };
}
