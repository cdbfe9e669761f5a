using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Designs;

/// <summary>How loose a set may lie in its stand over the year: the parameters, and whose squares they are.</summary>
internal readonly record struct StandFit(Length Least, Length? Most, HeldFrom From, string Gift)
{
    private const string LeastClearance = "least-clearance";
    private const string MostClearance = "most-clearance";

    // Common practice, no source: a square that is to slide in by hand.
    internal static readonly ImmutableArray<DesignParameter> Parameters =
    [
        new(LeastClearance, "Least clearance", ParameterKind.Length, "1/64 in", "What must be left in the dampest month, both sides together.", [], "0 in", "1 in"),
        new(MostClearance, "Most clearance", ParameterKind.Length, "0 in", "What it may grow to in the driest month, both sides together; 0 for no limit.", [], "0 in", "4 in"),
    ];

    internal static StandFit Read(DesignOptions options, DesignContext context, bool makes)
    {
        var (least, most) = (options.ReadLength(LeastClearance), options.ReadLength(MostClearance));
        options.Require(most.IsZero || most >= least, MostClearance, DesignMessages.AtLeast(options.ShowLeast(least), "the least clearance is as much"));
        var from = makes ? HeldFrom.SameGift : context.Holds is null ? HeldFrom.Described : HeldFrom.OtherGift;
        return new(least, most.IsZero ? null : most, from, from == HeldFrom.OtherGift ? context.HoldsGift : "");
    }

    /// <summary>The opening that a square slides into, whichever way its grain lies.</summary>
    internal Fit Beside(string key, string title, StackedSet set, FitOption option, ImmutableArray<Extent> holder) => new()
    {
        Key = key,
        Title = title,
        HeldTitle = "a square",
        Holder = holder,
        Held = [new(SquareSet.Key, GrainDirection.Width, set.Size)],
        HeldTurns = true,
        HeldFrom = From,
        HeldGift = Gift,
        Least = Least,
        Most = Most,
        Option = option,
    };

    /// <summary>The room that the stack stands in; it may be as high as the maker likes.</summary>
    internal Fit Above(string key, string title, StackedSet set, FitOption option, ImmutableArray<Extent> holder) => new()
    {
        Key = key,
        Title = title,
        HeldTitle = set.Count == 1 ? "a square" : $"the stack of {set.Count}",
        Holder = holder,
        Held = [new(SquareSet.Key, GrainDirection.Thickness, set.Height, set.Count)],
        HeldFrom = From,
        HeldGift = Gift,
        Least = Least,
        Option = option,
    };
}
