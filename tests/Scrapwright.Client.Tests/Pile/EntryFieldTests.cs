using Bunit;
using Scrapwright.Client.Pile;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;

namespace Scrapwright.Client.Tests.Pile;

public sealed class EntryFieldTests : ScreenContext
{
    private readonly List<Offcut> entered = [];

    [Fact]
    public void What_is_typed_is_read_back_at_once()
    {
        var field = Show();

        field.Find("input").Input("walnut 14 3/8 x 2 1/8 x 7/8 x3, cupped 1/16, knot 4-5");

        var back = field.Find(".readings").TextContent;
        Assert.Contains("walnut", back);
        Assert.Contains("14 3/8 in long", back);
        Assert.Empty(field.FindAll(".problems"));
    }

    [Fact]
    public void Enter_hands_over_the_offcut_as_written()
    {
        var field = Show();
        field.Find("input").Input("walnut 14 3/8 x 2 1/8 x 7/8 x3");

        field.Find("form").Submit();

        var offcut = Assert.Single(entered);
        Assert.Equal("black-walnut", offcut.Species);
        Assert.Equal(Length.FromInches(115, 8), offcut.Length);
        Assert.Equal(Length.FromInches(17, 8), offcut.Width);
        Assert.Equal(Length.FromInches(7, 8), offcut.Thickness);
        Assert.Equal(3, offcut.Count);
    }

    [Fact]
    public void Enter_on_a_line_not_understood_hands_over_nothing_and_keeps_the_text()
    {
        var field = Show();
        field.Find("input").Input("wallnutt 14 x");

        field.Find("form").Submit();

        Assert.Empty(entered);
        Assert.Equal("wallnutt 14 x", field.Find("input").GetAttribute("value"));
        Assert.Equal("true", field.Find("input").GetAttribute("aria-invalid"));
        Assert.NotEmpty(field.FindAll(".problems li"));
    }

    [Fact]
    public void The_marks_stand_under_the_column_of_the_problem()
    {
        const string Line = "walnut 14 x 2 x 7/8 blorp";
        var field = Show();

        field.Find("input").Input(Line);

        var outcome = Assert.IsType<EntryOutcome.NotUnderstood>(EntryLine.Parse(Line, LengthUnit.Inch));
        var marks = field.Find(".columns").TextContent.ReplaceLineEndings("\n").Split('\n')[1];
        Assert.Equal(outcome.Problems[0].Column - 1, marks.IndexOf('^'));
        Assert.Contains($"Column {outcome.Problems[0].Column}", field.Find(".problems").TextContent);
    }

    [Fact]
    public void A_suggestion_takes_the_place_of_the_word_and_is_understood()
    {
        var field = Show();
        field.Find("input").Input("purplehaert wood-x 14 x 2 x 7/8");
        while (field.FindAll(".suggestion").Count > 0)
        {
            var before = field.Find("input").GetAttribute("value");
            field.Find(".suggestion").Click();
            Assert.NotEqual(before, field.Find("input").GetAttribute("value"));
        }

        Assert.Contains("purpleheart", field.Find("input").GetAttribute("value") + field.Find(".read-back").TextContent);
    }

    [Fact]
    public void Escape_empties_the_field()
    {
        var field = Show();
        field.Find("input").Input("walnut 14");

        field.Find("input").KeyDown("Escape");

        Assert.True(string.IsNullOrEmpty(field.Find("input").GetAttribute("value")));
    }

    [Fact]
    public void Escape_while_editing_cancels()
    {
        var cancelled = 0;
        var field = Render<EntryField>(p => p.Add(f => f.Text, "walnut 14 x 2 x 1").Add(f => f.Cancelled, () => cancelled++));

        field.Find("input").KeyDown("Escape");

        Assert.Equal(1, cancelled);
    }

    [Fact]
    public void A_size_that_is_more_likely_a_slip_is_asked_back()
    {
        var field = Show();

        field.Find("input").Input("walnut 40 m x 2 in x 7/8 in");

        Assert.Contains("is that right?", field.Find(".doubt").TextContent);
    }

    private IRenderedComponent<EntryField> Show() => Render<EntryField>(p => p.Add(f => f.Entered, entered.Add));
}
