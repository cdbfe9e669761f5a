using System.Text;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;

namespace Scrapwright.Files.Tests;

public sealed class ChoicesFileTests
{
    private static readonly PlanRequest Request = new()
    {
        Pile = [new Offcut { Label = "W1", Species = "black-walnut", Length = Length.FromInches(20), Width = Length.FromInches(2), Thickness = Length.FromInches(1), Count = 2 }],
        Gifts = [new Gift { Label = "bench", Design = "striped-squares" }],
    };

    [Fact]
    public void A_file_is_read_to_its_choices_and_written_back()
    {
        var choices = Read("""{ "saved": ["W1"], "pins": [{ "offcut": "W1a", "gift": "bench", "part": "square" }], "orders": [{ "gift": "bench", "part": "square", "strips": [{ "offcut": "W1b", "roughWidth": "1 1/2 in" }] }] }""");

        Assert.Equal(["W1"], choices.Saved);
        Assert.Equal(new Pin("W1a", "bench", "square"), Assert.Single(choices.Pins));
        Assert.Equal(Length.FromInches(3, 2), choices.Orders[0].Strips[0].RoughWidth);
        Assert.Equal(ChoicesFile.Write(choices), ChoicesFile.Write(Read(ChoicesFile.Write(choices))));
    }

    [Theory]
    [InlineData("{ \"saved\": [\n  \"Z9\"] }", 2, 3, "saved[0]: Z9")]
    [InlineData("{ \"pins\": [{ \"offcut\": \"W1\", \"gift\": \"bench\", \"part\": \"square\" }] }", 1, 24, "pins[0].offcut: W1")]
    [InlineData("{ \"pins\": [{ \"offcut\": \"W1a\", \"gift\": \"bunch\", \"part\": \"square\" }] }", 1, 39, "pins[0].gift: bunch")]
    [InlineData("{ \"pins\": [{ \"offcut\": \"W1a\", \"gift\": \"bench\", \"part\": \"lid\" }] }", 1, 56, "pins[0].part: lid")]
    [InlineData("{ \"saved\": [null] }", 1, 13, "saved[0]: null")]
    [InlineData("{ \"pinned\": [] }", 1, 12, "$.pinned")]
    public void What_is_wrong_is_told_with_its_place(string text, int line, int column, string found)
    {
        var problem = Assert.Single(Assert.IsType<FileOutcome<MakerChoices>.Refused>(ChoicesFile.Parse(Encoding.UTF8.GetBytes(text), Request)).Problems);

        Assert.Equal((ChoicesFile.Name, line, column, found), (problem.File, problem.Line, problem.Column, problem.Found));
        Assert.NotEqual("", problem.Expected);
    }

    [Fact]
    public void A_workshop_with_choices_is_written_and_read_back()
    {
        var request = Request with { Choices = new() { Saved = ["W1", "gone"] } };
        var files = WorkshopFiles.Write(request).ToDictionary(f => f.Key, f => Encoding.UTF8.GetBytes(f.Value));

        var back = Assert.IsType<FileOutcome<PlanRequest>.Read>(WorkshopFiles.Read("shed", files)).Content;

        Assert.Equal(["W1"], back.Choices.Saved);
        Assert.DoesNotContain(ChoicesFile.Name, WorkshopFiles.Write(Request).Keys);
    }

    private static MakerChoices Read(string text) =>
        Assert.IsType<FileOutcome<MakerChoices>.Read>(ChoicesFile.Parse(Encoding.UTF8.GetBytes(text), Request)).Content;
}
