using System.Text.RegularExpressions;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Architecture.Tests;

/// <summary>What the documents say of the code and of each other.</summary>
public sealed partial class DocsTests
{
    private static readonly string[] Files =
    [
        .. Directory.EnumerateFiles(Repository.Root, "*.md").Concat(Directory.EnumerateFiles(Path.Combine(Repository.Root, "docs"), "*.md", SearchOption.AllDirectories))
            .Select(file => Path.GetRelativePath(Repository.Root, file).Replace('\\', '/')),
    ];

    private static readonly string[] Words = [.. FirstCell().Matches(Repository.Text("docs/glossary.md")).Select(match => match.Groups["word"].Value).Where(word => word != "word")];

    public static TheoryData<string> Nouns =>
    [
        nameof(Offcut), nameof(Defect), nameof(Species), nameof(EntryLine), nameof(Design), nameof(Product), nameof(Part), nameof(Fit), nameof(Gift), nameof(Shop), nameof(Station),
        nameof(Operation), nameof(Allowance), nameof(Workaround), nameof(Plan), nameof(Step), nameof(Work), nameof(Piece), nameof(Lane), nameof(Strip), nameof(GlueUp), nameof(BoardRun),
        nameof(Leftover), nameof(Level), nameof(Reason),
    ];

    [Fact]
    public void Links_lead_to_files()
    {
        var links = Files.SelectMany(file => Link().Matches(Repository.Text(file))
            .Select(match => (File: file, To: match.Groups["to"].Value.Split('#')[0]))
            .Where(link => link.To.Length > 0 && !link.To.Contains("://", StringComparison.Ordinal))).ToArray();

        Assert.NotEmpty(links);
        Assert.DoesNotContain(links, link => !Path.Exists(Path.Combine(Repository.Root, Path.GetDirectoryName(link.File)!, link.To)));
    }

    [Fact]
    public void The_readme_leads_to_every_document_for_makers()
    {
        var readme = Repository.Text("README.md");

        Assert.DoesNotContain(Files, file => file.StartsWith("docs/guide/", StringComparison.Ordinal) && !readme.Contains($"({file})", StringComparison.Ordinal));
    }

    [Fact]
    public void The_glossary_has_each_word_once()
    {
        Assert.NotEmpty(Words);
        Assert.Equal(Words.Distinct(), Words);
    }

    [Theory]
    [MemberData(nameof(Nouns))]
    public void The_glossary_has_the_noun(string type) =>
        Assert.Contains(Words, word => word.Replace(" ", "", StringComparison.Ordinal).Replace("-", "", StringComparison.Ordinal).Equals(type, StringComparison.OrdinalIgnoreCase));

    [Fact]
    public void Architecture_names_every_project()
    {
        var text = Repository.Text("docs/architecture.md");

        Assert.All(Projects.MayReferTo.Keys, project => Assert.Contains(project, text, StringComparison.Ordinal));
    }

    [GeneratedRegex(@"\]\((?<to>[^)\s]+)\)|(?:src|href)=""(?<to>[^""]+)""")]
    private static partial Regex Link();

    [GeneratedRegex(@"^\| (?<word>[a-z][a-z -]*) \|", RegexOptions.Multiline)]
    private static partial Regex FirstCell();
}
