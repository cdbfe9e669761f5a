namespace Scrapwright.Core.Shops;

/// <summary>What something costs to buy.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Name">Its name; see <see cref="PriceKind"/>.</param>
/// <param name="Amount">For one, in the shop's currency, exact. From zero</param>
/// <param name="Days">Until it is here. [d], from zero</param>
public sealed record Price(PriceKind Kind, string Name, decimal Amount, int Days)
{
    /// <summary>Anything: where, which size; empty for nothing.</summary>
    public string Note { get; init; } = "";

    /// <summary>True when it is for something of a kind with one of some names; case does not matter.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="names">The names.</param>
    public bool IsFor(PriceKind kind, params ReadOnlySpan<string> names)
    {
        if (Kind != kind) return false;
        foreach (var name in names)
        {
            if (string.Equals(name.Trim(), Name.Trim(), StringComparison.OrdinalIgnoreCase)) return true;
        }

        return false;
    }
}
