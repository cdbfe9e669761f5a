namespace Scrapwright.Core.Shops;

/// <summary>What a price is for.</summary>
public enum PriceKind
{
    /// <summary>A whole gift: its label, or the key of its design.</summary>
    Gift,

    /// <summary>One part of a gift: <c>gift/part</c> or <c>design/part</c>, by label or key.</summary>
    Part,

    /// <summary>A jig, by its key.</summary>
    Jig,

    /// <summary>Something on the shopping list, as it is called there, with or without its size.</summary>
    Item,
}
