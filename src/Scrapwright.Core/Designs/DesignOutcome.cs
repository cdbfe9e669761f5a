using System.Collections.Immutable;

namespace Scrapwright.Core.Designs;

/// <summary>What came of deriving a design: a product, or the options that do not fit together.</summary>
public abstract record DesignOutcome
{
    private DesignOutcome()
    {
    }

    /// <summary>The options fit.</summary>
    /// <param name="Product">Parts, joints and assembly.</param>
    public sealed record Derived(Product Product) : DesignOutcome;

    /// <summary>The options do not fit.</summary>
    /// <param name="Problems">Each wrong option, with what was found and expected.</param>
    public sealed record Refused(ImmutableArray<DesignProblem> Problems) : DesignOutcome;
}
