using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Pile;

/// <summary>Every text about entry lines that a person may read when something was not understood.</summary>
public static class EntryMessages
{
    /// <summary>Expected: the pattern of a line.</summary>
    public const string ALine = "a line such as: walnut 14 3/8 x 2 1/8 x 7/8 x3, cupped 1/16, knot 4-5";

    /// <summary>Expected: shorter text.</summary>
    public const string ShorterLine = "a line of at most 500 characters";

    /// <summary>Expected: no control characters.</summary>
    public const string PlainText = "plain text without control characters";

    /// <summary>Expected: a species.</summary>
    public const string ASpecies = "a species, such as walnut or hard maple";

    /// <summary>Expected: one species only.</summary>
    public const string OneSpecies = "one species; the line already has one";

    /// <summary>Expected: three sizes.</summary>
    public const string ThreeSizes = "three sizes, length x width x thickness, such as 14 3/8 x 2 1/8 x 7/8";

    /// <summary>Expected: no more sizes.</summary>
    public const string NoMoreSizes = "no more numbers: three sizes and a count are there already";

    /// <summary>Expected: a size after a cross.</summary>
    public const string ASizeAfterTimes = "a size after the x";

    /// <summary>Expected: above zero.</summary>
    public const string AboveZero = "a size above zero";

    /// <summary>Expected: a count in range.</summary>
    public const string ACount = "a whole number of pieces from 1 to 999";

    /// <summary>Expected: only one count, cup and so on.</summary>
    public const string OnlyOnce = "this only once in a line";

    /// <summary>Expected: how much warp.</summary>
    public const string HowMuch = "how much, such as cup 1/16";

    /// <summary>Expected: where a defect is.</summary>
    public const string Where = "where along the grain, from the marked end, such as knot 4-5, knot at 7 or split last 2";

    /// <summary>Expected: a defect.</summary>
    public const string ADefect = "a defect: knot, check, sapwood, nail hole, decay, wane or defect, and where, such as knot 4-5";

    /// <summary>Expected: a defect on the wood.</summary>
    public const string WithinTheLength = "a place within the length of the offcut";

    /// <summary>Expected: where a defect lies across the width.</summary>
    public const string WhereAcross = "where across the width, from the near edge, such as across 0-1/2 or across last 1/2";

    /// <summary>Expected: a defect on the wood, across.</summary>
    public const string WithinTheWidth = "a place within the width of the offcut";

    /// <summary>Expected: instead of the word flat alone.</summary>
    public const string FlatSawn = "flat sawn; leave the word out when it means not warped";

    /// <summary>Expected: something that is known.</summary>
    public const string AKnownWord =
        "a species, a size, a count (x3), faces (rough, s2s, one face), rings (quarter sawn, flat sawn, rift), cup, bow, twist, a defect (knot 4-5), or ; before a note";

    /// <summary>Expected: a label.</summary>
    public const string ALabel = "a label of 1 to 12 letters, digits or hyphens";

    /// <summary>Expected: another label.</summary>
    public const string AFreeLabel = "a label that no other offcut has";

    /// <summary>The sentence for a problem.</summary>
    /// <param name="problem">The problem.</param>
    public static string Sentence(EntryProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        var found = problem.Found.Length == 0 ? "something is missing" : $"found “{problem.Found}”";
        var maybe = problem.Suggestions.Length == 0 ? "" : $" Maybe {string.Join(" or ", problem.Suggestions)}.";
        return $"Column {problem.Column}: {found}, expected {problem.Expected}.{maybe}";
    }

    internal static string Size(Length size, LengthUnit unit) =>
        size.ToText(unit == LengthUnit.Inch ? LengthStyle.Inches : LengthStyle.Millimetres with { Decimals = 3 });
}
