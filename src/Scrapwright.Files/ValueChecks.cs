using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Files;

/// <summary>Gathers the values of one thing that break a rule, wherever they came from: a file or a screen.</summary>
public sealed class ValueChecks
{
    /// <summary>No size in a workshop is beyond this: 100 m.</summary>
    private static readonly Length Largest = Length.FromMillimetres(100_000);

    private readonly ImmutableArray<ValueProblem>.Builder problems = ImmutableArray.CreateBuilder<ValueProblem>();

    /// <summary>What was found so far, in the order of the checks.</summary>
    public ImmutableArray<ValueProblem> Problems => problems.ToImmutable();

    /// <summary>Notes a value unless it holds; of a long one only the beginning.</summary>
    public void Require(bool holds, string path, string found, string expected)
    {
        if (!holds) problems.Add(new(path, Shortened(found), expected));
    }

    /// <summary>Notes a size that is not above zero or beyond 100 m.</summary>
    public void Positive(string path, Length size, LengthUnit unit) =>
        Require(size.IsPositive && size <= Largest, path, size.ToExactText(unit), $"a size above zero, at most {Largest.ToExactText(LengthUnit.Millimetre)}");

    /// <summary>Notes a size below zero or beyond 100 m.</summary>
    public void NotNegative(string path, Length size, LengthUnit unit) =>
        Require(!size.IsNegative && size <= Largest, path, size.ToExactText(unit), $"a size of zero or more, at most {Largest.ToExactText(LengthUnit.Millimetre)}");

    /// <summary>Notes a number outside a range, and one that is none.</summary>
    public void Within(string path, double number, double least, double most) =>
        Require(number >= least && number <= most, path, $"{number}", $"{least} to {most}");

    /// <summary>Notes a text that is missing, too long, or not plain and on one line.</summary>
    public void Text(string path, string? text, int longest, bool mayBeEmpty = true)
    {
        if (text is null) Require(false, path, "null", "a text");
        else if (!mayBeEmpty && string.IsNullOrWhiteSpace(text)) Require(false, path, text, "some words");
        else if (text.Length > longest) Require(false, path, $"{text.Length} characters", $"at most {longest} characters");
        else Require(!text.Any(char.IsControl), path, "a control character", "plain text on one line");
    }

    /// <summary>Notes each option whose key or text will not do.</summary>
    public void Texts(string path, IEnumerable<KeyValuePair<string, string>> texts)
    {
        ArgumentNullException.ThrowIfNull(texts);
        foreach (var (key, value) in texts)
        {
            Text(path, key, 60, mayBeEmpty: false);
            Text($"{path}.{Shortened(key)}", value, 300);
        }
    }

    private static string Shortened(string text) => text.Length <= 80 ? text : text[..80] + "…";
}
