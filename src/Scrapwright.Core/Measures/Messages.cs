namespace Scrapwright.Core.Measures;

/// <summary>Every text about lengths that a person may read when something was not understood.</summary>
public static class Messages
{
    /// <summary>Expected: anything at all.</summary>
    public const string SomeText = "some text";

    /// <summary>A JSON value that is no length.</summary>
    public const string LengthJsonExpected =
        "Expected a length: an object with the whole number \"pm\" (picometres), or a string with its unit such as \"14 3/8 in\" or \"365 mm\".";

    /// <summary>A JSON value that is no area.</summary>
    public const string AreaJsonExpected = "Expected an area: a string of decimal digits, in square picometres.";

    /// <summary>A JSON value that is no volume.</summary>
    public const string VolumeJsonExpected = "Expected a volume: a string of decimal digits, in cubic picometres.";

    /// <summary>The sentence for a text that was not understood.</summary>
    /// <param name="position">Counted from 0; shown counted from 1.</param>
    /// <param name="found">What stands there; empty at the end.</param>
    /// <param name="expected">What would have been understood.</param>
    public static string NotUnderstood(int position, string found, string expected) => string.IsNullOrEmpty(found)
        ? $"At character {position + 1} the text ends; expected {expected}."
        : $"At character {position + 1}: found “{found}”, expected {expected}.";
}
