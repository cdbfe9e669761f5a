using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using Scrapwright.Core.Wood;

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
        foreach (Species species in SpeciesTable.All)
        {
            ValueSource?[] sources =
            [
                species.Sources.ScientificName, species.Sources.SpecificGravity, species.Sources.Shrinkage, species.Sources.VolumetricShrinkage,
                species.Sources.Coefficients, species.Sources.SideHardness, species.Sources.Colour,
            ];
            foreach (ValueSource source in sources.OfType<ValueSource>())
            {
                yield return (source.Key, species.Key);
            }

            foreach (Match match in species.Cautions.SelectMany(caution => KeyPattern().Matches(caution)))
            {
                yield return (match.Groups[1].Value, species.Key);
            }
        }

        foreach (Climate climate in ClimateTable.All)
        {
            yield return (climate.Source.Key, climate.Key);
        }

        foreach (string folder in (string[])["src", "tests"])
        {
            foreach (string file in Directory.EnumerateFiles(Path.Combine(Root(), folder), "*.cs", SearchOption.AllDirectories))
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
        }
    }

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
}
