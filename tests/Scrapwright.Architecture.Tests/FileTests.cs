using System.Text.RegularExpressions;

namespace Scrapwright.Architecture.Tests;

/// <summary>What source files look like.</summary>
public sealed partial class FileTests
{
    private const int MostLines = 400;

    /// <summary>Files that may be longer, with the reason.</summary>
    private static readonly Dictionary<string, string> MayBeLong = [];

    [Fact]
    public void Files_are_short()
    {
        var files = Repository.SourceFiles("src").Where(file => !file.Contains("/Migrations/", StringComparison.Ordinal)).ToArray();

        Assert.NotEmpty(files);
        var tooLong = files.Where(file => Repository.Text(file).Count(c => c == '\n') > MostLines).ToArray();
        Assert.Empty(tooLong.Except(MayBeLong.Keys));
        Assert.Empty(MayBeLong.Keys.Except(tooLong));
    }

    [Fact]
    public void A_file_holds_one_public_type_and_bears_its_name()
    {
        var crowded = new List<string>();
        foreach (var file in Repository.SourceFiles("src"))
        {
            var names = PublicType().Matches(Repository.Text(file)).Select(match => match.Groups["name"].Value).ToArray();
            var name = Path.GetFileName(file).Split('.')[0];
            if (names.Length > 1 || (names.Length == 1 && names[0] != name && !file.Contains("/Migrations/", StringComparison.Ordinal)))
            {
                crowded.Add($"{file}: {string.Join(", ", names)}");
            }
        }

        Assert.Empty(crowded);
    }

    [Fact]
    public void Nothing_is_left_unwritten()
    {
        var files = Repository.SourceFiles("src").Concat(Repository.SourceFiles("tests")).Where(file => !file.EndsWith("/FileTests.cs", StringComparison.Ordinal));

        Assert.DoesNotContain(files, file => Unwritten().IsMatch(Repository.Text(file)));
    }

    [GeneratedRegex(@"^public (?:(?:static|sealed|abstract|partial|readonly|unsafe|ref) )*(?:record struct|record class|record|class|struct|interface|enum|delegate [^ (]+) (?<name>\w+)", RegexOptions.Multiline)]
    private static partial Regex PublicType();

    [GeneratedRegex(@"NotImplementedException|\bTODO\b|\bFIXME\b")]
    private static partial Regex Unwritten();
}
