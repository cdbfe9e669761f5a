using System.Collections.Immutable;

namespace Scrapwright.Storage;

/// <summary>What came of replacing: all of it, or nothing.</summary>
public abstract record ReplaceOutcome
{
    private ReplaceOutcome()
    {
    }

    /// <summary>It was replaced.</summary>
    public sealed record Replaced : ReplaceOutcome;

    /// <summary>Nothing was changed, because labels stand there twice.</summary>
    /// <param name="Pile">In the pile.</param>
    /// <param name="Gifts">In the list of gifts.</param>
    public sealed record LabelsTaken(ImmutableArray<TakenLabel> Pile, ImmutableArray<TakenLabel> Gifts) : ReplaceOutcome;

    /// <summary>Nothing was changed, because names of occasions stand there twice.</summary>
    /// <param name="Names">Never empty.</param>
    public sealed record NamesTaken(ImmutableArray<TakenLabel> Names) : ReplaceOutcome;

    /// <summary>Nothing was changed, because the workshop is not empty.</summary>
    public sealed record NotEmpty : ReplaceOutcome;
}
