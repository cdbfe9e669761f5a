using System.Collections.Immutable;
using Scrapwright.Client.Api;
using Scrapwright.Core.Measures;

namespace Scrapwright.Web.Hosting;

/// <summary>Gathers what is wrong with the values of one thing.</summary>
internal sealed class FieldChecks(string prefix = "")
{
    /// <summary>No size in a workshop is beyond this: 100 m.</summary>
    internal static readonly Length Largest = Length.FromMillimetres(100_000);

    private readonly ImmutableArray<FieldProblem>.Builder problems = ImmutableArray.CreateBuilder<FieldProblem>();

    internal ImmutableArray<FieldProblem> Problems => problems.ToImmutable();

    internal void Wrong(string field, string found, string expected) => problems.Add(new(prefix + field, Shortened(found), expected));

    internal void Positive(string field, Length length, LengthUnit unit)
    {
        if (!length.IsPositive || length > Largest) Wrong(field, length.ToExactText(unit), $"above zero, at most {Largest.ToExactText(LengthUnit.Millimetre)}");
    }

    internal void NotNegative(string field, Length length, LengthUnit unit)
    {
        if (length.IsNegative || length > Largest) Wrong(field, length.ToExactText(unit), $"zero or more, at most {Largest.ToExactText(LengthUnit.Millimetre)}");
    }

    internal void Within(string field, double number, double least, double most)
    {
        if (!(number >= least && number <= most)) Wrong(field, $"{number}", $"{least} to {most}");
    }

    internal void Text(string field, string? text, int longest, bool mayBeEmpty = true)
    {
        if (text is null) Wrong(field, "null", "a text");
        else if (!mayBeEmpty && string.IsNullOrWhiteSpace(text)) Wrong(field, text, "some words");
        else if (text.Length > longest) Wrong(field, $"{text.Length} characters", $"at most {longest} characters");
        else if (text.Any(char.IsControl)) Wrong(field, "a control character", "plain text on one line");
    }

    internal void Texts(string field, IEnumerable<KeyValuePair<string, string>> texts)
    {
        foreach (var (key, value) in texts)
        {
            Text(field, key, 60, mayBeEmpty: false);
            Text($"{field}.{Shortened(key)}", value, 300);
        }
    }

    private static string Shortened(string text) => text.Length <= 80 ? text : text[..80] + "…";
}
