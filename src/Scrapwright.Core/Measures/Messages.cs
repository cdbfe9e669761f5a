namespace Scrapwright.Core.Measures;

/// <summary>Every text about lengths that a person may read when something was not understood.</summary>
public static class Messages
{
    /// <summary>Expected: anything at all.</summary>
    public const string SomeText = "some text";

    /// <summary>Expected: a length.</summary>
    public const string ALength = "a length such as 14 3/8 in, 1-3/8\", 36.5 cm or 9mm";

    /// <summary>Expected: no sign.</summary>
    public const string LengthNotNegative = "a length without a minus sign";

    /// <summary>Expected: a unit, where a bare number has none.</summary>
    public const string AUnit = "a unit: in, ft, mm, cm, m, µm or thou";

    /// <summary>Expected: after a number.</summary>
    public const string AUnitOrTheEnd = "a unit (in, ft, mm, cm, m, µm or thou) or the end";

    /// <summary>Expected: after a length with its unit.</summary>
    public const string TheEnd = "the end, since the length is complete";

    /// <summary>Expected: after feet and a number.</summary>
    public const string AnInchMark = "an inch mark (in or \") after the inches";

    /// <summary>Expected: after feet.</summary>
    public const string InchesBelowTwelve = "inches below 12 after feet";

    /// <summary>Expected: after a stroke.</summary>
    public const string ADenominator = "the lower number of the fraction";

    /// <summary>Expected: instead of 3/0.</summary>
    public const string DenominatorAboveZero = "a lower number above zero";

    /// <summary>Expected: instead of 1 9/8.</summary>
    public const string FractionBelowOne = "a fraction below 1 after a whole number";

    /// <summary>Expected: instead of 3/8/2 or 1.2.3.</summary>
    public const string NumberEnd = "the end of the number: one whole number, one decimal or one fraction";

    /// <summary>Expected: instead of 1,200, which has two readings.</summary>
    public const string NoThousandsMark = "a number without a thousands mark: write 1200, or 1.2 with a point";

    /// <summary>Expected: what can be kept exactly.</summary>
    public const string WholePicometres = "a whole number of picometres: 1/512 in, 0.0001 in and 0.001 mm are, 1/3 in is not";

    /// <summary>Expected: what can be kept at all.</summary>
    public const string LengthInRange = "a length below 9,223 km";

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
