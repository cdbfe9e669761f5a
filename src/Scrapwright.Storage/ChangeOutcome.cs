namespace Scrapwright.Storage;

/// <summary>What came of changing or restoring a row.</summary>
/// <typeparam name="T">What is kept.</typeparam>
public abstract record ChangeOutcome<T>
{
    private ChangeOutcome()
    {
    }

    /// <summary>It was changed.</summary>
    /// <param name="Row">As kept now.</param>
    public sealed record Changed(T Row) : ChangeOutcome<T>;

    /// <summary>It was not: the label stands on something else.</summary>
    /// <param name="Label">The label.</param>
    public sealed record LabelTaken(string Label) : ChangeOutcome<T>;

    /// <summary>There is no such row.</summary>
    /// <param name="Id">The id asked for.</param>
    public sealed record Missing(long Id) : ChangeOutcome<T>;
}
