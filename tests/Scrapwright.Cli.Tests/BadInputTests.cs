using System.Text;

namespace Scrapwright.Cli.Tests;

/// <summary>Input as people have it, through the whole program: a clear refusal or a right reading, never a stack trace, never half a pile.</summary>
public sealed class BadInputTests
{
    private const string Columns = Workshop.PileColumns;

    private const string Row = "W1,walnut,18 1/2,2 1/8,7/8\n";

    public static TheoryData<string, string> Refused => new()
    {
        { "label,species,length,width\nW1,walnut,18,2\n", "pile.csv, line 1: something is missing, expected a column named thickness." },
        { Columns + Row + "W2,walnut,-18,2,1\n", "pile.csv, line 3, column 11: found “-18”" },
        { Columns + Row + "W2,walnut,18,0,1\n", "pile.csv, line 3, column 14: found “0”, expected a size above zero." },
        { Columns + Row + "W2,walnutt,18,2,1\n", "pile.csv, line 3, column 4: found “walnutt”, expected a species; maybe" },
        { Columns + Row + "W1,walnut,18,2,1\n", "pile.csv, line 3, column 1: found “W1”, expected a label of its own; line 2 has it too." },
        { Columns + Row + "W2,walnut,18\0,2,1\n", "pile.csv, line 3, column 13: found “U+0000”, expected plain text without control characters." },
        { Columns + Row + "W2,walnut,long,2,1\n", "pile.csv, line 3, column 11: found “long”" },
        { "", "pile.csv" },
        { new string('\uFFFD', 3_400_000), "pile.csv: found “more than 4 MB”, expected a file of at most 4 MB." },
    };

    public static TheoryData<string, byte[]> ReadRight => new()
    {
        { "as it should be", Encoding.UTF8.GetBytes(Columns + Row) },
        { "Windows line ends", Encoding.UTF8.GetBytes((Columns + Row).Replace("\n", "\r\n", StringComparison.Ordinal)) },
        { "a byte order mark", [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Columns + Row)] },
        { "semicolons", Encoding.UTF8.GetBytes((Columns + Row).Replace(',', ';')) },
        { "decimal commas", Encoding.UTF8.GetBytes(Columns.Replace(',', ';') + "W1;walnut;18,5;2,125;0,875\n") },
        { "millimetres", Encoding.UTF8.GetBytes(Columns + "W1,walnut,469.9 mm,53.975mm,22.225 mm\n") },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public async Task A_pile_that_is_not_understood_is_refused_whole(string pile, string said)
    {
        using var workshop = Workshop.With(pile);

        var check = await Program.RunAsync("check", workshop.Folder);
        var plan = await Program.RunAsync("plan", workshop.Folder, "--out", workshop.PathOf("out"));

        Assert.Equal((2, ""), (check.Code, check.Output));
        Assert.Contains(said, check.Error, StringComparison.Ordinal);
        Assert.Equal(check, plan);
        Assert.False(Directory.Exists(workshop.PathOf("out")));
        check.IsPlain();
    }

    [Theory]
    [MemberData(nameof(ReadRight))]
    public async Task A_pile_written_another_way_is_read_right(string how, byte[] pile)
    {
        using var workshop = Workshop.With(pile);

        var ran = await Program.RunAsync("check", workshop.Folder);

        Assert.True(ran.Code == 0, $"{how}: {ran.Error}");
        Assert.Contains("  W1: walnut 18 1/2 in x 2 1/8 in x 7/8 in\n", ran.Output.Replace("black walnut", "walnut", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ten_megabytes_of_garbage_are_refused()
    {
        var garbage = new byte[10 * 1024 * 1024];
        new Random(1).NextBytes(garbage);
        using var workshop = Workshop.With(garbage);

        var ran = await Program.RunAsync("check", workshop.Folder);

        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.Contains("pile.csv: ", ran.Error, StringComparison.Ordinal);
        ran.IsPlain();
    }

    [Fact]
    public async Task A_40_metre_offcut_is_asked_back_not_refused()
    {
        using var workshop = Workshop.With(Columns + "W1,walnut,40 m,2,1\n");

        var ran = await Program.RunAsync("check", workshop.Folder);

        Assert.Equal(0, ran.Code);
        Assert.Contains("pile.csv, line 2: ", ran.Error, StringComparison.Ordinal);
        Assert.Contains("is that right?", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Several_problems_are_all_named()
    {
        using var workshop = Workshop.With(Columns + "W1,walnut,0,2,1\nW2,wolnut,18,2,1\n", Workshop.GiftColumns + "squares,,,striped-squares,,soon,1\n");

        var ran = await Program.RunAsync("check", workshop.Folder);

        Assert.Equal(2, ran.Code);
        Assert.Equal(3, ran.Error.Count(c => c == '\n'));
        Assert.Contains("gifts.csv, line 2, column 28: found “soon”, expected a date such as", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_option_that_a_design_cannot_take_is_said()
    {
        using var workshop = Workshop.With(Columns + Row, Workshop.GiftColumns + "squares,,,striped-squares,count=400,,1\n");

        var ran = await Program.RunAsync("check", workshop.Folder);

        Assert.Equal(1, ran.Code);
        Assert.Contains("squares: count: found “400”, expected ", ran.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("empty", "no file of a workshop")]
    [InlineData("nowhere", "no such folder")]
    [InlineData("file", "a file")]
    public async Task What_is_no_workshop_folder_is_refused(string name, string found)
    {
        using var workshop = new Workshop();
        File.WriteAllText(workshop.PathOf("file"), "");
        Directory.CreateDirectory(workshop.PathOf("empty"));

        var ran = await Program.RunAsync("check", workshop.PathOf(name));

        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.Contains($"found “{found}”, expected a workshop folder with pile.csv and gifts.csv", ran.Error, StringComparison.Ordinal);
        ran.IsPlain();
    }
}
