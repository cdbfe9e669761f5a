using System.Collections.Immutable;

namespace Scrapwright.Core.Plans.Ideas;

/// <summary>A question for ideas.</summary>
/// <param name="Kind">What is asked.</param>
/// <param name="Offcut">Label of the single offcut that is asked about; empty otherwise.</param>
/// <param name="BesideGifts">True when the gifts on the list stay made and only what they leave is looked at; false for the whole pile, as if there were no list.</param>
/// <param name="Seconds">Longest search. [s], above 0 and at most <see cref="MostSeconds"/></param>
public sealed record IdeasQuestion(IdeasKind Kind, string Offcut = "", bool BesideGifts = true, double Seconds = IdeasQuestion.StandardSeconds)
{
    /// <summary>Seconds when nothing else is asked for. [s], our own choice</summary>
    public const double StandardSeconds = 20;

    /// <summary>Who the gifts would be for; empty for nobody in particular.</summary>
    public string Recipient { get; init; } = "";

    /// <summary>Keys of designs that the recipient has had: they are proposed only when nothing else is left.</summary>
    public ImmutableArray<string> Had { get; init; } = [];

    /// <summary>Most seconds that can be asked for. [s], our own choice</summary>
    public const double MostSeconds = 600;
}
