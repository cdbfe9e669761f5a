namespace Scrapwright.Cli.Tests;

public sealed class IdeasCommandTests
{
    private const string ThreeStrips = Workshop.PileColumns + "W1,walnut,18,1 5/8,7/8\nM1,hard maple,18,1 5/8,7/8\nW2,walnut,18,1 5/8,7/8\n";

    private const string NoGifts = Workshop.GiftColumns;

    [Fact]
    public async Task It_says_what_a_pile_gives_and_how_sure_that_is()
    {
        using var workshop = Workshop.With(ThreeStrips, NoGifts);

        var ran = await Program.RunAsync("ideas", workshop.Folder, "--seconds", "2", "--repeatable");

        Assert.Equal(0, ran.Code);
        Assert.Contains("what the pile gives.\nWhat puts most of the pile into gifts comes first", ran.Output, StringComparison.Ordinal);
        Assert.Contains("4 striped squares, 4 in: 1, the most there can be\n", ran.Output, StringComparison.Ordinal);
        Assert.Contains("Cannot be made, not even once: ", ran.Output, StringComparison.Ordinal);
        Assert.Contains("4 striped squares, 4 in: 1\n", ran.Error, StringComparison.Ordinal);
        ran.IsPlain();
    }

    [Fact]
    public async Task It_says_where_an_offcut_serves_best()
    {
        using var workshop = Workshop.With(ThreeStrips);

        var ran = await Program.RunAsync("ideas", workshop.Folder, "--offcut", "M1", "--seconds", "2", "--repeatable");

        Assert.Equal(0, ran.Code);
        Assert.Contains("where M1 serves best beside 1 gift on the list.", ran.Output, StringComparison.Ordinal);
        Assert.Contains("  1. squares: strips of the square\n     Against leaving it alone: squares can only be made with it", ran.Output, StringComparison.Ordinal);
        ran.IsPlain();
    }

    [Fact]
    public async Task It_says_what_to_buy()
    {
        using var workshop = Workshop.With(Workshop.PileColumns + "W1,walnut,18,1 5/8,7/8\nW2,walnut,18,1 5/8,7/8\n", Workshop.GiftColumns + "squares,,,striped-squares,count=4; species=walnut+hard maple,,1\n");

        var ran = await Program.RunAsync("ideas", workshop.Folder, "--buy", "--seconds", "2", "--repeatable");

        Assert.Equal(0, ran.Code);
        Assert.Contains("what to buy for what is not made: squares.", ran.Output, StringComparison.Ordinal);
        Assert.Contains("  1. a board of hard maple, 36 in × 6 in × 1 in: Makes 1 gift possible: squares.", ran.Output, StringComparison.Ordinal);
        Assert.Matches("Tried, and no more can be made with it: .*a board of walnut", ran.Output);
        ran.IsPlain();
    }

    [Fact]
    public async Task A_pile_that_gives_nothing_is_an_answer_with_code_1()
    {
        using var workshop = Workshop.With(Workshop.PileColumns + "W1,walnut,4,1,1/2\n", NoGifts);

        var ran = await Program.RunAsync("ideas", workshop.Folder, "--seconds", "1", "--repeatable");

        Assert.Equal(1, ran.Code);
        Assert.Contains("This pile gives none of the designs.", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("expected one of the pile: W1, M1, W2", "--offcut", "X9")]
    [InlineData("expected one of them", "--offcut", "W1", "--buy")]
    [InlineData("above 0", "--seconds", "0")]
    public async Task A_question_that_cannot_be_asked_says_what_can(string expected, params string[] arguments)
    {
        using var workshop = Workshop.With(ThreeStrips);

        var ran = await Program.RunAsync(["ideas", workshop.Folder, .. arguments]);

        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.Contains(expected, ran.Error, StringComparison.Ordinal);
        ran.IsPlain();
    }
}
