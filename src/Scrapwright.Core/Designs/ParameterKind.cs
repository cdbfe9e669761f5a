namespace Scrapwright.Core.Designs;

/// <summary>What kind of value a design parameter takes.</summary>
public enum ParameterKind
{
    /// <summary>A length, as people write it.</summary>
    Length,

    /// <summary>A whole number.</summary>
    Count,

    /// <summary>One of a few words.</summary>
    Choice,

    /// <summary>Species wishes: names separated by + signs; empty for any.</summary>
    Species,

    /// <summary>The label of another gift.</summary>
    Gift,
}
