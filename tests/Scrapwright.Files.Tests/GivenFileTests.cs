using System.Collections.Immutable;
using System.Text;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Files.Tests;

public sealed class GivenFileTests
{
    private const string Names = "date,occasion,recipient,circle,design,options,note\n";

    private static FileProblem OnlyProblem(string text) =>
        Assert.Single(Assert.IsType<FileOutcome<ImmutableArray<GivenGift>>.Refused>(GivenFile.Parse(text)).Problems);

    private static ImmutableArray<GivenGift> Read(string text) => Assert.IsType<FileOutcome<ImmutableArray<GivenGift>>.Read>(GivenFile.Parse(text)).Content;

    private static Dictionary<string, byte[]> Bytes(IEnumerable<KeyValuePair<string, string>> files) => files.ToDictionary(f => f.Key, f => Encoding.UTF8.GetBytes(f.Value));

    [Fact]
    public void Parse_reads_what_was_given_also_of_a_design_and_an_occasion_that_are_gone()
    {
        var given = Assert.Single(Read(Names + "2025-06-21,Old fair,gate keeper,helpers,old-box,Lid=yes; size=4 in,liked it\n"));

        Assert.Equal((new DateOnly(2025, 6, 21), "Old fair", "gate keeper", "helpers", "old-box", "liked it"), (given.Date, given.Occasion, given.Recipient, given.Circle, given.Design, given.Note));
        Assert.Equal([new("lid", "yes"), new("size", "4 in")], given.Options);
        Assert.Equal("", Assert.Single(Read("design,recipient,date\nu-stand,a,2025-01-01\n")).Occasion);
    }

    [Theory]
    [InlineData(",,a,,u-stand,,", 1, "", FileMessages.ADate)]
    [InlineData("2025-02-29,,a,,u-stand,,", 1, "2025-02-29", FileMessages.ADate)]
    [InlineData("2025-06-21,, ,,u-stand,,", 13, "", "some words")]
    [InlineData("2025-06-21,,a,,,,", 16, "", "some words")]
    [InlineData("2025-06-21,,a,,u-stand,count 4,", 24, "count 4", FileMessages.AnOption)]
    public void Parse_refuses_a_row_with_its_place(string row, int column, string found, string expected) =>
        Assert.Equal(new FileProblem(GivenFile.Name, 2, column, found, expected), OnlyProblem(Names + row + "\n"));

    [Fact]
    public void A_workshop_is_written_and_read_back_with_its_years()
    {
        var files = Bytes(WorkshopFiles.Write(ExampleWorkshop.Listed, ExampleWorkshop.Hours, ExampleWorkshop.Years));

        var request = Assert.IsType<FileOutcome<PlanRequest>.Read>(WorkshopFiles.Read(ExampleWorkshop.Name, files)).Content;
        var years = Assert.IsType<FileOutcome<GiftYears>.Read>(WorkshopFiles.ReadYears(files)).Content;

        Assert.Equal(PlanJson.Fingerprint(ExampleWorkshop.Listed), PlanJson.Fingerprint(request));
        Assert.Equal(ExampleWorkshop.Years.Occasions, years.Occasions);
        Assert.Equal(GivenFile.Write(ExampleWorkshop.Years.Given), GivenFile.Write(years.Given));
        Assert.Equal([2025, 2026], years.Given.Select(g => g.Date.Year).Distinct());
        Assert.All(years.Given, given => Assert.Equal("invented", given.Note));
    }

    [Fact]
    public void A_workshop_without_years_has_no_file_of_them()
    {
        var files = WorkshopFiles.Write(ExampleWorkshop.Request);

        Assert.Equal((false, false), (files.ContainsKey(GivenFile.Name), files.ContainsKey(OccasionsFile.Name)));
        Assert.True(Assert.IsType<FileOutcome<GiftYears>.Read>(WorkshopFiles.ReadYears(Bytes(files))).Content.AreNone);
    }

    [Fact]
    public void A_fault_in_either_file_makes_the_workshop_unreadable_and_is_told_once()
    {
        var files = Bytes(WorkshopFiles.Write(ExampleWorkshop.Listed, null, ExampleWorkshop.Years));
        files[OccasionsFile.Name] = Encoding.UTF8.GetBytes("occasion,date\nApple day,soon\n");
        files[GivenFile.Name] = Encoding.UTF8.GetBytes("when,who\n");

        var refused = Assert.IsType<FileOutcome<PlanRequest>.Refused>(WorkshopFiles.Read(ExampleWorkshop.Name, files));

        Assert.Equal([OccasionsFile.Name, GivenFile.Name], refused.Problems.Select(p => p.File).Distinct());
        Assert.Single(refused.Problems, p => p.File == OccasionsFile.Name);
        Assert.IsType<FileOutcome<GiftYears>.Refused>(WorkshopFiles.ReadYears(files));
    }

    [Theory]
    [InlineData("Open dya", "", "an occasion of occasions.csv; maybe Open day")]
    [InlineData("open DAY", "", null)]
    [InlineData("Open dya", "2027-06-01", "an occasion of occasions.csv; maybe Open day")]
    public void A_gift_names_an_occasion_that_there_is(string occasion, string due, string? expected)
    {
        var outcome = GiftsFile.Parse($"gift,design,occasion,due\na,u-stand,{occasion},{due}\n", new Shop(), [new Occasion { Name = "Open day", Date = new(2027, 6, 19) }]);

        if (expected is null) Assert.Equal(occasion, Assert.IsType<FileOutcome<ImmutableArray<Gift>>.Read>(outcome).Content[0].Occasion);
        else Assert.Equal([new FileProblem(GiftsFile.Name, 2, 11, occasion, expected)], Assert.IsType<FileOutcome<ImmutableArray<Gift>>.Refused>(outcome).Problems);
    }

    [Theory]
    [InlineData("2027-06-01", true)]
    [InlineData("", false)]
    public void Without_any_occasion_a_name_is_read_only_beside_a_date(string due, bool isRead) =>
        Assert.Equal(isRead, GiftsFile.Parse($"gift,design,occasion,due\na,u-stand,Fair,{due}\n", new Shop(), []) is FileOutcome<ImmutableArray<Gift>>.Read);
}
