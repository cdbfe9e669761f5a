using System.Collections.Immutable;

namespace Scrapwright.Core.Designs;

/// <summary>A parametric kind of thing: it knows its parameters and derives parts, joints and order of assembly from them.</summary>
public abstract class DesignFamily
{
    /// <summary>Name in files.</summary>
    public abstract string Key { get; }

    /// <summary>Name on screens.</summary>
    public abstract string Title { get; }

    /// <summary>One sentence: what it is.</summary>
    public abstract string Summary { get; }

    /// <summary>What the maker may choose, in the order shown.</summary>
    public abstract ImmutableArray<DesignParameter> Parameters { get; }

    /// <summary>Parts, joints and assembly for given options, or why not. Options not given take the parameter's default.</summary>
    /// <param name="options">Values by parameter key, as text.</param>
    /// <param name="context">Shop facts the design needs and the product it holds, if any.</param>
    public abstract DesignOutcome Derive(ImmutableSortedDictionary<string, string> options, DesignContext context);
}
