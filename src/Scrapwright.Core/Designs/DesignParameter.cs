using System.Collections.Immutable;

namespace Scrapwright.Core.Designs;

/// <summary>One number or word that a design lets the maker choose.</summary>
/// <param name="Key">Name in files and options, lower case with hyphens.</param>
/// <param name="Title">Name on screens.</param>
/// <param name="Kind">What it takes.</param>
/// <param name="Default">Value when not given, written as the maker would.</param>
/// <param name="Hint">One line that helps to choose.</param>
/// <param name="Choices">The allowed words of a choice; empty otherwise.</param>
/// <param name="Minimum">Least allowed value as text; empty for none.</param>
/// <param name="Maximum">Greatest allowed value as text; empty for none.</param>
public sealed record DesignParameter(
    string Key,
    string Title,
    ParameterKind Kind,
    string Default,
    string Hint,
    ImmutableArray<string> Choices,
    string Minimum = "",
    string Maximum = "");
