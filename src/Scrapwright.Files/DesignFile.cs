using System.Text.Json;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Plans;

namespace Scrapwright.Files;

/// <summary>Reads and writes one design of <c>designs/*.json</c>. Whether its family takes the options is for the family to say.</summary>
public static class DesignFile
{
    /// <summary>The folder within a workshop folder.</summary>
    public const string Folder = "designs";

    /// <summary>Reads the file's bytes, UTF-8.</summary>
    /// <param name="file">Name to report problems under, such as <c>designs/tall-stand.json</c>.</param>
    /// <param name="bytes">The whole file.</param>
    public static FileOutcome<Design> Parse(string file, ReadOnlySpan<byte> bytes)
    {
        var problems = new ProblemList(file);
        return Parse(FileText.Decode(bytes, problems), problems);
    }

    /// <summary>Reads the file's text.</summary>
    /// <param name="file">Name to report problems under.</param>
    /// <param name="text">The whole file.</param>
    public static FileOutcome<Design> Parse(string file, string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var problems = new ProblemList(file);
        return Parse(FileText.Check(text, problems), problems);
    }

    /// <summary>The file's text, which is read back to the same design.</summary>
    /// <param name="design">The design.</param>
    public static string Write(Design design) => JsonSerializer.Serialize(design, PlanJson.Indented).ReplaceLineEndings("\n") + "\n";

    /// <summary>The file's name within a workshop folder.</summary>
    /// <param name="design">A design whose key keeps the rule for keys, and so is a plain file name.</param>
    /// <exception cref="ArgumentException">The key is none.</exception>
    public static string NameOf(Design design)
    {
        ArgumentNullException.ThrowIfNull(design);
        return IsKey(design.Key) ? $"{Folder}/{design.Key}.json" : throw new ArgumentException($"'{design.Key}' is no key: {FileMessages.AKey}.", nameof(design));
    }

    private static FileOutcome<Design> Parse(string? text, ProblemList problems)
    {
        var design = text is null ? null : JsonText.Read<Design>(text, problems);
        if (design is not null) Check(design, new JsonPlaces(text!), problems);
        return problems.Outcome(() => design!);
    }

    private static void Check(Design design, JsonPlaces places, ProblemList problems)
    {
        if (!IsKey(design.Key)) Add("key", design.Key, FileMessages.AKey);
        if (string.IsNullOrWhiteSpace(design.Title)) Add("title", design.Title, FileMessages.AValue);
        if (DesignCatalogue.FindFamily(design.Family) is null)
        {
            var families = DesignCatalogue.Families.Select(family => family.Key).ToList();
            Add("family", design.Family, $"one of the families {string.Join(", ", families)}");
        }

        foreach (var option in design.Options.Where(option => option.Value is null)) Add($"options.{option.Key}", "null", FileMessages.AValue);

        void Add(string path, string found, string expected)
        {
            var (line, column) = places.Of("$." + path);
            problems.Add(line, column, found, expected);
        }
    }

    private static bool IsKey(string key) =>
        key.Length is > 0 and <= 40 && key[0] != '-' && key.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-');
}
