using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Files;

/// <summary>Gathers the values of one thing that break a rule.</summary>
internal sealed class ValueChecks
{
    /// <summary>No size in a workshop is beyond this: 100 m.</summary>
    private static readonly Length Largest = Length.FromMillimetres(100_000);

    private readonly ImmutableArray<ValueProblem>.Builder problems = ImmutableArray.CreateBuilder<ValueProblem>();

    internal ImmutableArray<ValueProblem> Problems => problems.ToImmutable();

    internal void Require(bool holds, string path, string found, string expected)
    {
        if (!holds) problems.Add(new(path, Shortened(found), expected));
    }

    internal void Positive(string path, Length size, LengthUnit unit) =>
        Require(size.IsPositive && size <= Largest, path, size.ToExactText(unit), $"a size above zero, at most {Largest.ToExactText(LengthUnit.Millimetre)}");

    internal void NotNegative(string path, Length size, LengthUnit unit) =>
        Require(!size.IsNegative && size <= Largest, path, size.ToExactText(unit), $"a size of zero or more, at most {Largest.ToExactText(LengthUnit.Millimetre)}");

    // Written so that a number that is none is refused too.
    internal void Within(string path, double number, double least, double most) =>
        Require(number >= least && number <= most, path, $"{number}", $"{least} to {most}");

    internal void Text(string path, string text, int longest, bool mayBeEmpty = true)
    {
        if (!mayBeEmpty && string.IsNullOrWhiteSpace(text)) Require(false, path, text, "some words");
        else if (text.Length > longest) Require(false, path, $"{text.Length} characters", $"at most {longest} characters");
        else Require(!text.Any(char.IsControl), path, "a control character", "plain text on one line");
    }

    private static string Shortened(string text) => text.Length <= 80 ? text : text[..80] + "…";
}
