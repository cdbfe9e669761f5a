namespace Scrapwright.Core.Plans.Chances;

/// <summary>How likely all panels and solid parts of a gift hold their sizes.</summary>
/// <param name="Gift">The gift.</param>
/// <param name="Share">The chance, 0 to 1.</param>
public sealed record GiftChance(string Gift, double Share)
{
    /// <summary>The chance in thousandths, rounded down.</summary>
    public int PerMille => SizeChances.ToPerMille(Share);
}
