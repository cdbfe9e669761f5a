using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;

namespace Scrapwright.Core.Tests.Wood;

public sealed partial class ReferencesTests
{
    [Fact]
    public void Every_key_used_is_listed()
    {
        HashSet<string> listed = Listed();

        var missing = Used().Where(use => !listed.Contains(use.Key)).Select(use => $"[{use.Key}] in {use.Place}").Distinct();

        Assert.Empty(missing);
    }

    [Fact]
    public void Every_key_listed_is_used()
    {
        var used = Used().Select(use => use.Key).ToHashSet();

        Assert.Equal([], Listed().Except(used));
    }

    private static HashSet<string> Listed() =>
        [.. File.ReadLines(Path.Combine(Root(), "docs", "references.md")).Where(line => line.StartsWith("### ", StringComparison.Ordinal)).Select(line => line[4..].Trim())];

    private static IEnumerable<(string Key, string Place)> Used()
    {
        foreach (string folder in (string[])["src", "tests"])
        {
            foreach (string file in Files(folder, "*.cs"))
            {
                foreach (string line in File.ReadLines(file))
                {
                    int comment = line.IndexOf("//", StringComparison.Ordinal);
                    foreach (Match match in comment < 0 ? [] : KeyPattern().Matches(line[comment..]).AsEnumerable())
                    {
                        yield return (match.Groups[1].Value, Path.GetFileName(file));
                    }
                }
            }

            foreach (string file in Files(folder, "*.csv"))
            {
                foreach (string line in File.ReadLines(file))
                {
                    foreach (Match match in KeyPattern().Matches(line).Concat(SourcePattern().Matches(line)))
                    {
                        yield return (match.Groups[1].Value, Path.GetFileName(file));
                    }
                }
            }
        }
    }

    private static IEnumerable<string> Files(string folder, string pattern) =>
        Directory.EnumerateFiles(Path.Combine(Root(), folder), pattern, SearchOption.AllDirectories).Where(file => !file.Contains("/bin/") && !file.Contains("/obj/"));

    private static string Root([CallerFilePath] string thisFile = "")
    {
        string? folder = Path.GetDirectoryName(thisFile);
        while (folder is not null && !File.Exists(Path.Combine(folder, "Scrapwright.slnx")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        return folder ?? throw new InvalidOperationException("The repository's root was not found above the test's source.");
    }

    // A key: a capital letter, then letters and digits, in square brackets, and no link behind it.
    [GeneratedRegex(@"\[([A-Z][A-Za-z0-9]+)\](?!\()")]
    private static partial Regex KeyPattern();

    // A source in a table: key; place; how sure.
    [GeneratedRegex(@"(?<=^|,|""|\| )([A-Z][A-Za-z0-9]+);[^;,""]*(?:,[^;""]*)?; *(?:printed|derived|derived-check|memory|estimate)(?=$|,|""| \|)")]
    private static partial Regex SourcePattern();
}
