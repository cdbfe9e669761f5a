using System.Collections.Immutable;
using System.Text;
using Scrapwright.Core.Shops;

namespace Scrapwright.Files.Tests;

public sealed class TimesFileTests
{
    private const string Header = "date,operation,planned,took,setting,note\n";

    [Fact]
    public void Parse_reads_names_of_the_plan_and_of_the_shop()
    {
        var readings = Read(Header + "2027-05-04,edge-joint,14,20,,\n2027-05-05,Joint one face,5,9,by-hand,dull plane\n2027-05-06,FINISH,10,8,Drying-Oil,\n");

        Assert.Equal(
            [
                new(new(2027, 5, 4), Operation.EdgeJoint, 14, 20),
                new(new(2027, 5, 5), Operation.FaceJoint, 5, 9) { Setting = TimeReading.ByHand, Note = "dull plane" },
                new(new(2027, 5, 6), Operation.Finish, 10, 8) { Setting = "drying-oil" },
            ],
            readings.AsEnumerable());
    }

    [Fact]
    public void Write_is_read_back_to_the_same_readings()
    {
        ImmutableArray<TimeReading> readings =
        [
            new(new(2027, 5, 4), Operation.GlueUp, 14, 20) { Note = "two, with a \"helper\"" }, new(new(2027, 5, 5), Operation.FaceJoint, 5, 9) { Setting = TimeReading.ByHand },
        ];

        Assert.Equal(readings.AsEnumerable(), Read(TimesFile.Write(readings)));
    }

    [Theory]
    [InlineData("2027-5-4,sand,1,1,,", 1, FileMessages.ADate)]
    [InlineData("2027-05-04,edge-jiont,1,1,,", 12, "maybe edge-joint")]
    [InlineData("2027-05-04,sand,ten,1,,", 17, FileMessages.WholeMinutes)]
    [InlineData("2027-05-04,sand,1,1.5,,", 19, FileMessages.WholeMinutes)]
    [InlineData("2027-05-04,sand,0,1,,", 17, "1 to 10000")]
    [InlineData("2027-05-04,sand,1,,,", 19, FileMessages.WholeMinutes)]
    [InlineData("2027-05-04,finish,1,1,drying-oli,", 23, "maybe drying-oil")]
    [InlineData("2027-05-04,sand,1,1,drying-oil,", 21, "by-hand, or nothing")]
    public void Parse_refuses_what_does_not_fit_with_its_place(string row, int column, string expected)
    {
        var refused = Assert.IsType<FileOutcome<ImmutableArray<TimeReading>>.Refused>(TimesFile.Parse(Header + row + "\n"));

        var problem = Assert.Single(refused.Problems);
        Assert.Equal((TimesFile.Name, 2, column), (problem.File, problem.Line, problem.Column));
        Assert.Contains(expected, problem.Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_has_none_when_there_is_no_file_and_a_wrong_file_is_told_with_the_others()
    {
        var files = new Dictionary<string, byte[]>();
        Assert.Empty(Assert.IsType<FileOutcome<WorkshopNotes>.Read>(WorkshopFiles.ReadNotes(files)).Content.Times);

        foreach (var (name, text) in WorkshopFiles.Write(ExampleWorkshop.Request, null, null, new() { Times = [new(new(2027, 5, 4), Operation.Sand, 10, 20)] })) files[name] = Encoding.UTF8.GetBytes(text);
        Assert.Single(Assert.IsType<FileOutcome<WorkshopNotes>.Read>(WorkshopFiles.ReadNotes(files)).Content.Times);

        files[TimesFile.Name] = Encoding.UTF8.GetBytes(Header + "today,sand,1,1,,\n");
        var refused = Assert.IsType<FileOutcome<Core.Plans.PlanRequest>.Refused>(WorkshopFiles.Read("shed", files));
        Assert.Equal(TimesFile.Name, Assert.Single(refused.Problems).File);
    }

    private static ImmutableArray<TimeReading> Read(string text) => Assert.IsType<FileOutcome<ImmutableArray<TimeReading>>.Read>(TimesFile.Parse(text)).Content;
}
