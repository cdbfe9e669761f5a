using System.Text.Json.Serialization;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans.Choices;

namespace Scrapwright.Core.Plans;

/// <summary>Why a gift is not made.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "kind")]
[JsonDerivedType(typeof(MissingStrips), "missing-strips")]
[JsonDerivedType(typeof(MissingBoard), "missing-board")]
[JsonDerivedType(typeof(WrongOption), "wrong-option")]
[JsonDerivedType(typeof(BeyondShop), "beyond-shop")]
[JsonDerivedType(typeof(Pinned), "pinned")]
[JsonDerivedType(typeof(OutOfTime), "out-of-time")]
public abstract record Reason
{
    private Reason()
    {
    }

    /// <summary>A panel part lacks strips.</summary>
    /// <param name="Part">Key of the part.</param>
    /// <param name="Strips">How many more strips; at least 1.</param>
    /// <param name="Tone">How light they must be.</param>
    /// <param name="Width">Least rough width of each.</param>
    /// <param name="Length">Least length.</param>
    /// <param name="Thickness">Least rough thickness.</param>
    public sealed record MissingStrips(string Part, int Strips, Tone Tone, Length Width, Length Length, Length Thickness) : Reason;

    /// <summary>A run of solid parts finds no board.</summary>
    /// <param name="Run">Mark of the run.</param>
    /// <param name="Width">Least rough width.</param>
    /// <param name="Length">Least length.</param>
    /// <param name="Thickness">Least rough thickness.</param>
    public sealed record MissingBoard(string Run, Length Width, Length Length, Length Thickness) : Reason;

    /// <summary>The design cannot take an option.</summary>
    /// <param name="Option">Key of the option.</param>
    /// <param name="Found">What was given.</param>
    /// <param name="Expected">What would do.</param>
    public sealed record WrongOption(string Option, string Found, string Expected) : Reason;

    /// <summary>A station or the clamps cannot do what a part needs.</summary>
    /// <param name="Part">Key of the part.</param>
    /// <param name="Limit">Which limit, in words.</param>
    /// <param name="Needed">What the part needs.</param>
    /// <param name="Allowed">What the shop has.</param>
    public sealed record BeyondShop(string Part, string Limit, Length Needed, Length Allowed) : Reason;

    /// <summary>A pin of the maker cannot be kept.</summary>
    /// <param name="Part">Key of the part.</param>
    /// <param name="Offcut">Label of the pinned offcut.</param>
    /// <param name="Fault">Why.</param>
    /// <param name="Needed">The size it would need; zero where no size is the matter.</param>
    /// <param name="Has">The size it has; zero where no size is the matter.</param>
    public sealed record Pinned(string Part, string Offcut, PinFault Fault, Length Needed, Length Has) : Reason;

    /// <summary>The search ended before it could tell: the wood left over would do for this gift taken alone.</summary>
    public sealed record OutOfTime : Reason;
}
