using System.Collections.Immutable;
using Scrapwright.Core.Gifts;

namespace Scrapwright.Files.Tests;

public sealed class OccasionsFileTests
{
    private const string Names = "occasion,date,repeats,note\nOpen day,2027-06-19,third Saturday of June,\n";

    private static FileProblem OnlyProblem(string text) =>
        Assert.Single(Assert.IsType<FileOutcome<ImmutableArray<Occasion>>.Refused>(OccasionsFile.Parse(text)).Problems);

    private static ImmutableArray<Occasion> Read(string text) => Assert.IsType<FileOutcome<ImmutableArray<Occasion>>.Read>(OccasionsFile.Parse(text)).Content;

    [Fact]
    public void Parse_reads_occasions_and_needs_only_name_and_date()
    {
        Assert.Equal(
            [
                new() { Name = "Open day", Date = new(2027, 6, 19), Repeats = new Repetition.OnWeekday(6, 3, DayOfWeek.Saturday), Note = "" },
                new() { Name = "Birthday", Date = new(1970, 2, 28), Repeats = new Repetition.OnDate(2, 28), Note = "cake, too" },
            ],
            Read(Names + "Birthday,1970-02-28,every year,\"cake, too\"\n"));
        Assert.Equal([new() { Name = "Wedding", Date = new(2027, 8, 7) }], Read("date;occasion\n2027-08-07;Wedding\n"));
    }

    [Theory]
    [InlineData(",2027-06-19,,", 1, "", "some words")]
    [InlineData("Fair,19.6.2027,,", 6, "19.6.2027", FileMessages.ADate)]
    [InlineData("Fair,,,", 6, "", FileMessages.ADate)]
    [InlineData("Fair,1899-12-31,,", 6, "1899-12-31", FileMessages.ADate)]
    [InlineData("open DAY,2027-06-19,,", 1, "open DAY", "a name of its own; line 2 has it too")]
    [InlineData("Fair,2027-06-19,whenever,", 17, "whenever", RepetitionWords.Expected)]
    [InlineData("Fair,2027-06-19,thrid Sunday of May,", 17, "thrid Sunday of May", RepetitionWords.Expected + "; maybe third Sunday of May")]
    public void Parse_refuses_a_row_with_its_place(string row, int column, string found, string expected) =>
        Assert.Equal(new FileProblem(OccasionsFile.Name, 3, column, found, expected), OnlyProblem(Names + row + "\n"));

    [Fact]
    public void Write_is_read_back_to_the_same_occasions()
    {
        ImmutableArray<Occasion> occasions =
        [
            .. ExampleWorkshop.Years.Occasions,
            new() { Name = "Easter, \"egg\" day", Date = new(2027, 3, 28), Repeats = new Repetition.FromEaster(0) },
            new() { Name = "Once", Date = new(2028, 2, 29), Note = " a; b, c" },
            new() { Name = "Leap", Date = new(2028, 2, 29), Repeats = new Repetition.OnDate(2, 29) },
        ];

        Assert.Equal(occasions.Select(o => o with { Note = o.Note.Trim() }), Read(OccasionsFile.Write(occasions)));
    }
}
