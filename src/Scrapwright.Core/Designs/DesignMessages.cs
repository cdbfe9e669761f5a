namespace Scrapwright.Core.Designs;

/// <summary>Every text about designs that a person may read when an option does not fit.</summary>
public static class DesignMessages
{
    /// <summary>Expected: no second value.</summary>
    public const string OptionOnce = "each option once";

    /// <summary>Expected: heart sides as they come.</summary>
    public const string HeartsOfSisters = "any, since one of two book-matched sisters is turned over";

    /// <summary>Expected: a gift that can be held.</summary>
    public const string GiftWithSquares = "the label of a gift that makes a set of squares";

    /// <summary>Expected: no squares of its own.</summary>
    public const string NoOwnSquares = "no, since it holds the squares of another gift";

    /// <summary>Expected: another option name.</summary>
    public static string KnownOption(string nearest) => $"an option of this design; the nearest is {nearest}";

    /// <summary>Expected: another design name.</summary>
    public static string KnownDesign(string nearest) => $"the name of a design; the nearest is {nearest}";

    /// <summary>Expected: another family name.</summary>
    public static string KnownFamily(string nearest) => $"the name of a family; the nearest is {nearest}";

    /// <summary>Expected: another gift's label.</summary>
    public static string KnownGift(string nearest) =>
        nearest.Length == 0 ? "the label of another gift; there is none" : $"the label of another gift; the nearest is {nearest}";

    /// <summary>Expected: no ring of gifts that hold each other.</summary>
    public static string NoRing(IEnumerable<string> labels) => $"a gift that does not hold this one in turn; here {string.Join(" holds ", labels)}";

    /// <summary>Expected: that the held gift can be made.</summary>
    public static string HeldGiftFits(string label) => $"a gift whose own options fit; see those of {label}";

    /// <summary>Expected: a length within bounds; an empty bound is none.</summary>
    public static string LengthBetween(string least, string most) => (least, most) switch
    {
        ("", "") => "a length",
        ("", _) => $"a length up to {most}",
        (_, "") => $"a length from {least}",
        _ => $"a length from {least} to {most}",
    };

    /// <summary>Expected: a whole number within bounds.</summary>
    public static string CountBetween(int least, int most) => $"a whole number from {least} to {most}";

    /// <summary>Expected: one of a few words.</summary>
    public static string OneOf(IEnumerable<string> words) => "one of " + string.Join(", ", words);

    /// <summary>Expected: a species that is known.</summary>
    public static string KnownSpecies(IEnumerable<string> suggestions)
    {
        var names = string.Join(" or ", suggestions);
        return "names of species with + between them" + (names.Length == 0 ? "" : $"; maybe {names}");
    }

    /// <summary>Expected: the value that the held set has.</summary>
    public static string AsTheHeldSet(string value) => $"{value}, as the set it holds has, or nothing";

    /// <summary>Expected: larger squares, and why.</summary>
    public static string SquaresAtLeast(string limit, string reason) => $"squares of at least {limit}: {reason}";

    /// <summary>Expected: at least so much, and why.</summary>
    public static string AtLeast(string limit, string reason) => $"at least {limit}: {reason}";

    /// <summary>Expected: at most so much, and why.</summary>
    public static string AtMost(string limit, string reason) => $"at most {limit}: {reason}";
}
