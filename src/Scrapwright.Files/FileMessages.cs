using System.Globalization;
using Scrapwright.Core.Finishing;
using Scrapwright.Core.Gifts;

namespace Scrapwright.Files;

/// <summary>Every text about files that a person may read when one cannot be used.</summary>
public static class FileMessages
{
    /// <summary>Expected: a smaller file.</summary>
    public const string SmallerFile = "a file of at most 4 MB";

    /// <summary>Expected: UTF-8.</summary>
    public const string Utf8 = "UTF-8 text; save the file again with the encoding UTF-8";

    /// <summary>Expected: no control characters.</summary>
    public const string PlainText = "plain text without control characters";

    /// <summary>Expected: no empty file.</summary>
    public const string SomeRows = "a first line with the names of the columns";

    /// <summary>Expected: a folder.</summary>
    public const string AFolder = "a workshop folder with pile.csv and gifts.csv, and if wanted occasions.csv, given.csv, shop.json, hours.json, times.csv, prices.csv, jigs.csv, choices.json and designs/*.json";

    /// <summary>Expected: a file that must be there.</summary>
    public const string TheFile = "this file";

    /// <summary>Expected: fewer rows.</summary>
    public const string FewerRows = "at most 20000 rows";

    /// <summary>Expected: a well-quoted cell.</summary>
    public const string ClosingQuote = "a closing quote directly before the next separator or the end of the line";

    /// <summary>Expected: no more cells.</summary>
    public const string NoMoreCells = "no more cells than the first line has";

    /// <summary>Expected: a value.</summary>
    public const string AValue = "a value";

    /// <summary>Expected: above zero.</summary>
    public const string AboveZero = "a size above zero";

    /// <summary>Expected: a count.</summary>
    public const string ACount = "a whole number from 1 to 999";

    /// <summary>Expected: a label.</summary>
    public const string ALabel = "a label of 1 to 12 letters, digits or hyphens";

    /// <summary>Expected: faces.</summary>
    public const string FacesWord = "rough, one face or both faces";

    /// <summary>Expected: rings.</summary>
    public const string RingsWord = "quarter, rift, flat or nothing";

    /// <summary>Expected: a gift's name.</summary>
    public const string AGiftName = "a short name of 1 to 24 characters";

    /// <summary>Expected: a date.</summary>
    public const string ADate = "a date such as 2027-06-19";

    /// <summary>Expected: minutes.</summary>
    public const string WholeMinutes = "whole minutes, such as 25";

    /// <summary>Expected: an amount of money.</summary>
    public const string AnAmount = "an amount in the shop's currency such as 12.50, without its sign";

    /// <summary>Expected: yes or no.</summary>
    public const string YesOrNo = "yes, no or nothing";

    /// <summary>Expected: a priority.</summary>
    public const string APriority = "a whole number from 1 (made first) to 9";

    /// <summary>Expected: options.</summary>
    public const string AnOption = "options such as count=4; size=4 in; pattern=mirrored";

    /// <summary>Expected: a key.</summary>
    public const string AKey = "a key of lower-case letters, digits and hyphens";

    /// <summary>The sentence for a problem.</summary>
    /// <param name="problem">The problem.</param>
    public static string Sentence(FileProblem problem)
    {
        ArgumentNullException.ThrowIfNull(problem);
        var place = (problem.Line, problem.Column) switch
        {
            (0, _) => problem.File,
            (_, 0) => $"{problem.File}, line {problem.Line}",
            _ => $"{problem.File}, line {problem.Line}, column {problem.Column}",
        };
        var found = problem.Found.Length == 0 ? "something is missing" : $"found “{problem.Found}”";
        return $"{place}: {found}, expected {problem.Expected}.";
    }

    internal static string UniqueLabel(int line) => $"a label of its own; line {line} has it too";

    internal static string OnlyOnce(int line) => $"each only once; line {line} has it too";

    internal static string UniqueName(int line) => $"a name of its own; line {line} has it too";

    internal static string AnOccasion(string found, IReadOnlyCollection<string> known) =>
        known.Count == 0 ? $"an occasion of {OccasionsFile.Name}, which has none" : AKeyOf($"an occasion of {OccasionsFile.Name}", known, found);

    internal static string ARepetition(string nearest) => RepetitionWords.Expected + Maybe(nearest.Length == 0 ? [] : [nearest]);

    internal static string ASpecies(IEnumerable<string> near) => "a species" + Maybe(near);

    internal static string AKeyOf(string what, IReadOnlyCollection<string> known, string found)
    {
        var nearest = TableReader.Nearest(found, known);
        return nearest.Length > 0 ? $"{what}; maybe {nearest}" : $"{what}: {string.Join(", ", known)}";
    }

    internal static string ATimeZone(string found)
    {
        var nearest = TableReader.Nearest(found, [.. TimeZoneInfo.GetSystemTimeZones().Select(zone => zone.Id)]);
        return $"a time zone of the IANA database such as Europe/Dublin, or nothing for that of this machine{Maybe(nearest.Length == 0 ? [] : [nearest])}";
    }

    internal static string AGrit(string found)
    {
        // Nearest by its number, not by its letters: for P130 that is P120, not P30.
        var scale = found.Contains('P', StringComparison.OrdinalIgnoreCase) ? GritScale.Fepa : GritScale.Cami;
        var near = int.TryParse(string.Concat(found.Where(char.IsAsciiDigit)), out var number)
            ? GritTable.All.Where(grit => grit.Scale == scale).MinBy(grit => Math.Abs(int.Parse(grit.Mark.TrimStart('P'), CultureInfo.InvariantCulture) - (long)number))
            : null;
        return "a grit such as P120 (FEPA) or 120 (CAMI)" + Maybe(near is null ? [] : [near.Mark]);
    }

    internal static string AColumn(IEnumerable<string> known, string nearest) => $"one of the columns {string.Join(", ", known)}{Maybe(nearest.Length == 0 ? [] : [nearest])}";

    /// <summary>Expected: a column.</summary>
    /// <param name="name">Its name.</param>
    public static string TheColumn(string name) => $"a column named {name}";

    private static string Maybe(IEnumerable<string> near)
    {
        var words = string.Join(" or ", near);
        return words.Length == 0 ? "" : $"; maybe {words}";
    }
}
