namespace Scrapwright.Core.Finishing;

/// <summary>Something that a plan uses up.</summary>
/// <param name="Kind">What kind; its unit is that of <paramref name="Amount"/>.</param>
/// <param name="What">What it is, in trade words; the mark of a grit for discs or sheets.</param>
/// <param name="Amount">How much: grams, millilitres or pieces. Null when the table does not know it.</param>
/// <param name="Text">The amount in the maker's units; empty when it is not known.</param>
/// <param name="Why">What for.</param>
public sealed record Consumable(ConsumableKind Kind, string What, Band? Amount, string Text, string Why)
{
    /// <summary>The amount as it reads beside <see cref="What"/>: <c>2 discs or sheets</c> behind the mark of a grit, else <see cref="Text"/>.</summary>
    public string Beside => Kind != ConsumableKind.Abrasive ? Text : Text == "1" ? "1 disc or sheet" : $"{Text} discs or sheets";
}
