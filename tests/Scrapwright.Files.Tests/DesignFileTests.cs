using System.Collections.Immutable;
using Scrapwright.Core.Designs;

namespace Scrapwright.Files.Tests;

public sealed class DesignFileTests
{
    [Fact]
    public void Write_is_read_back_to_the_same_design()
    {
        var design = new Design { Key = "tall-stand", Title = "Tall stand", Family = "rod-stand", Options = new Dictionary<string, string> { ["head-room"] = "2 in" }.ToImmutableSortedDictionary() };

        var read = Assert.IsType<FileOutcome<Design>.Read>(DesignFile.Parse("designs/x.json", DesignFile.Write(design))).Content;

        Assert.Equal((design.Key, design.Title, design.Family), (read.Key, read.Title, read.Family));
        Assert.Equal(design.Options, read.Options);
        Assert.Equal("designs/tall-stand.json", DesignFile.NameOf(design));
    }

    [Theory]
    [InlineData("{\n\"key\": \"../x\", \"title\": \"T\", \"family\": \"rod-stand\" }", "../x")]
    [InlineData("{\n\"key\": \"x\", \"title\": \" \", \"family\": \"rod-stand\" }", " ")]
    [InlineData("{\n\"key\": \"x\", \"title\": \"T\", \"family\": \"rod-stnd\" }", "rod-stnd")]
    [InlineData("{\n\"key\": \"x\", \"title\": \"T\", \"family\": \"rod-stand\", \"options\": { \"count\": null } }", "null")]
    public void Parse_refuses_at_the_place(string text, string found)
    {
        var problem = Assert.Single(Assert.IsType<FileOutcome<Design>.Refused>(DesignFile.Parse("designs/x.json", text)).Problems);

        Assert.Equal(("designs/x.json", 2, found), (problem.File, problem.Line, problem.Found));
        Assert.True(problem.Column > 1);
    }

    [Fact]
    public void Parse_names_what_is_missing()
    {
        var problem = Assert.Single(Assert.IsType<FileOutcome<Design>.Refused>(DesignFile.Parse("designs/x.json", "{ \"key\": \"x\" }")).Problems);

        Assert.Contains("family", problem.Expected, StringComparison.Ordinal);
        Assert.DoesNotContain("LineNumber", problem.Expected, StringComparison.Ordinal);
    }
}
