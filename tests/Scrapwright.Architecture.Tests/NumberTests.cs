using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Scrapwright.Architecture.Tests;

/// <summary>In the areas that hold facts of the world, a number says where it comes from: in the comment of its member or type, or in one beside it.</summary>
public sealed partial class NumberTests
{
    private static readonly double[] Plain = [0, 1, 2, 10, 100, 1000];

    public static TheoryData<string> Areas => ["Wood", "Finishing", "Fits"];

    [Theory]
    [MemberData(nameof(Areas))]
    public void Every_number_has_a_source_or_says_that_it_has_none(string area)
    {
        string folder = $"src/Scrapwright.Core/{area}";
        string[] files = Directory.Exists(Path.Combine(Repository.Root, folder)) ? [.. Repository.SourceFiles(folder)] : [];

        Assert.True(files.Length > 0 || area != "Wood", "No file of Wood was found.");
        AssertNone(files.SelectMany(file => WithoutSource(Repository.Text(file)).Select(number => $"{file}: {number}")));
    }

    // The rule itself: what it lets pass, and what it does not.
    [Theory]
    [InlineData("static class A { const double B = 3.7; }", "line 1: 3.7")]
    [InlineData("static class A\n{\n    /// <summary>Half a turn. Definition.</summary>\n    const int B = 180;\n    const int C = 360;\n}", "line 5: 360")]
    [InlineData("static class A { static double B(double c) => c * 1000 / 2 + 1; }", "")]
    [InlineData("static class A { static int B(int[] c) => c[3]; }", "")]
    [InlineData("static class A { const double B = 3.7; // [WoodHandbook], Table 4-2\n}", "")]
    [InlineData("static class A { const double B = 3.7; // [%]\n}", "line 1: 3.7")]
    [InlineData("// Estimate.\nstatic class A { static double B(double c) => c * 3.7; }", "")]
    [InlineData("static class A\n{\n    static int B(int c) => c switch\n    {\n        // Our own choice.\n        < 5 => 1,\n        < 7 => 2,\n        _ => 0,\n    };\n}", "line 7: 7")]
    [InlineData("static class A\n{\n    // Estimate.\n    const double B = 3.7;\n    const double C = 3.8;\n}", "")]
    [InlineData("static class A\n{\n    // Estimate.\n    const double B = 3.7;\n\n    const double C = 3.8;\n}", "line 6: 3.8")]
    [InlineData("static class A { static string B() => \"37\"; }", "")]
    [InlineData("enum A { B = 5 }", "line 1: 5")]
    public void A_number_without_a_source_is_found(string source, string expected) => Assert.Equal(expected, string.Join("; ", WithoutSource(source)));

    [Fact]
    public void Every_row_of_a_table_has_a_source_that_is_listed()
    {
        var listed = Key().Matches(Repository.Text("docs/references.md")).Select(match => match.Groups["key"].Value).ToHashSet();
        string[] tables = [.. Directory.EnumerateFiles(Path.Combine(Repository.Root, "src/Scrapwright.Core"), "*.csv", SearchOption.AllDirectories).Where(file => !file.Contains("/obj/", StringComparison.Ordinal))];
        var faults = new List<string>();

        foreach (string table in tables)
        {
            string[] lines = File.ReadAllLines(table);
            string[] header = [.. Cell().Matches(lines[0]).Select(Text)];
            for (int i = 1; i < lines.Length; i++)
            {
                string[] cells = [.. Cell().Matches(lines[i]).Select(Text)];
                string[] sources = [.. cells.Zip(header).Where(cell => cell.Second.EndsWith("source", StringComparison.Ordinal)).SelectMany(cell => cell.First.Split('|', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))];
                if (cells.Length != header.Length || sources.Length == 0 || sources.Any(source => !Source().IsMatch(source) || !listed.Contains(source.Split(';')[0])))
                {
                    faults.Add($"{Path.GetFileName(table)}, line {i + 1}: {string.Join(" / ", sources)}");
                }
            }
        }

        Assert.NotEmpty(tables);
        AssertNone(faults);

        static string Text(Match match) => match.Groups["quoted"].Success ? match.Groups["quoted"].Value : match.Groups["bare"].Value;
    }

    // All of them in the message, since they are mended together.
    private static void AssertNone(IEnumerable<string> faults) => Assert.True(!faults.Any(), string.Join('\n', faults));

    private static IEnumerable<string> WithoutSource(string source)
    {
        SyntaxTree tree = CSharpSyntaxTree.ParseText(source);
        string[] lines = source.Split('\n');
        foreach (SyntaxToken number in tree.GetRoot().DescendantTokens().Where(token => token.IsKind(SyntaxKind.NumericLiteralToken)))
        {
            int line = number.GetLocation().GetLineSpan().StartLinePosition.Line;
            if (!Plain.Contains(Convert.ToDouble(number.Value, CultureInfo.InvariantCulture)) && !IsIndex(number.Parent!) && !Comments(number, lines[line]).Any(text => Said().IsMatch(text)))
            {
                yield return $"line {line + 1}: {number.Text}";
            }
        }
    }

    private static bool IsIndex(SyntaxNode literal) => literal.Ancestors().TakeWhile(node => node is not StatementSyntax and not MemberDeclarationSyntax).Any(node => node is BracketedArgumentListSyntax);

    // Comments on the number's own line, and those before whatever holds it: arm, statement, member, type. Fields without a blank line between them share the // comment above them, not a documentation comment.
    private static IEnumerable<string> Comments(SyntaxToken number, string line)
    {
        int comment = line.IndexOf("//", StringComparison.Ordinal);
        IEnumerable<string> beside = comment < 0 ? [] : [line[comment..]];
        return beside.Concat(number.Parent!.AncestorsAndSelf()
            .Where(node => node is StatementSyntax or MemberDeclarationSyntax or SwitchExpressionArmSyntax or SwitchSectionSyntax or ExpressionElementSyntax)
            .Select(LeadingComment));
    }

    private static string LeadingComment(SyntaxNode node)
    {
        SyntaxTriviaList before = node.GetLeadingTrivia();
        if (node is FieldDeclarationSyntax && !before.Any(trivia => IsComment(trivia) || trivia.IsKind(SyntaxKind.EndOfLineTrivia)))
        {
            return node.Parent!.ChildNodes().TakeWhile(sibling => sibling != node).LastOrDefault() is FieldDeclarationSyntax previous && !IsDocumented(previous) ? LeadingComment(previous) : "";
        }

        return string.Join('\n', before.Where(IsComment).Select(trivia => trivia.ToFullString()));
    }

    private static bool IsDocumented(FieldDeclarationSyntax field) => field.GetLeadingTrivia().Any(trivia => trivia.IsKind(SyntaxKind.SingleLineDocumentationCommentTrivia));

    private static bool IsComment(SyntaxTrivia trivia) =>
        trivia.IsKind(SyntaxKind.SingleLineCommentTrivia) || trivia.IsKind(SyntaxKind.MultiLineCommentTrivia) || trivia.IsKind(SyntaxKind.SingleLineDocumentationCommentTrivia);

    // A key, or one of the words for numbers that have none.
    [GeneratedRegex(@"\[[A-Z][A-Za-z0-9]+\]|[Cc]ommon practice, no source|[Ee]stimate|[Oo]ur own|[Ff]rom memory|[Dd]efinition")]
    private static partial Regex Said();

    [GeneratedRegex(@"(?<=^|,)(?:""(?<quoted>[^""]*)""|(?<bare>[^,]*))(?=,|$)")]
    private static partial Regex Cell();

    [GeneratedRegex(@"^[A-Z][A-Za-z0-9]+; *[^;]+; *(printed|derived|derived-check|memory|estimate)$")]
    private static partial Regex Source();

    [GeneratedRegex("^### (?<key>[A-Za-z0-9]+)", RegexOptions.Multiline)]
    private static partial Regex Key();
}
