using System.Collections.Immutable;
using System.Text;
using CsCheck;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Wood;

namespace Scrapwright.Files.Tests;

public sealed class PileFileTests
{
    private const string Names = "label,species,length,width,thickness,count,faces,grain,cup,bow,twist,defects,note\n";

    private static FileOutcome<ImmutableArray<Offcut>>.Read Read(string text, LengthUnit unit = LengthUnit.Inch)
    {
        var outcome = PileFile.Parse(Encoding.UTF8.GetBytes(text), unit);
        return outcome is FileOutcome<ImmutableArray<Offcut>>.Read read
            ? read
            : throw new Xunit.Sdk.XunitException(string.Join(" | ", ((FileOutcome<ImmutableArray<Offcut>>.Refused)outcome).Problems));
    }

    private static FileOutcome<ImmutableArray<Offcut>>.Refused Refused(byte[] bytes) =>
        Assert.IsType<FileOutcome<ImmutableArray<Offcut>>.Refused>(PileFile.Parse(bytes, LengthUnit.Inch));

    private static FileOutcome<ImmutableArray<Offcut>>.Refused Refused(string text) => Refused(Encoding.UTF8.GetBytes(text));

    private static void AssertIsTheOffcut(Offcut offcut)
    {
        Assert.Equal(
            ("W1", "black-walnut", Length.FromInches(115, 8), Length.FromInches(17, 8), Length.FromInches(7, 8), 3),
            (offcut.Label, offcut.Species, offcut.Length, offcut.Width, offcut.Thickness, offcut.Count));
        Assert.Equal((Faces.OneSurfaced, RingOrientation.Quarter, Length.FromInches(1, 16)), (offcut.Faces, offcut.Rings, offcut.Cup));
        Assert.Equal([new Defect(DefectKind.Knot, Length.FromInches(4), Length.FromInches(5)), new Defect(DefectKind.Check, Length.Zero, Length.FromInches(1))], offcut.Defects);
        Assert.Equal("from the gate, old", offcut.Note);
    }

    [Theory]
    [InlineData(Names + "W1,walnut,14 3/8,2 1/8,7/8,3,one face,quarter,1/16,,,knot 4-5; check 0-1,\"from the gate, old\"\n")]
    [InlineData(Names + "W1,walnut,14 3/8\",2-1/8\",⅞,3,one face,quarter,1/16,,,knot 4-5; check 0-1,\"from the gate, old\"")]
    [InlineData("\uFEFF" + Names + "\n\nW1,\"walnut\",\"14 3/8\"\"\",2 1/8 in,.875,3,s1s,quarter-sawn,1/16,0,,\"knot 4-5, check 0-1\",\"from the gate, old\"\n,,,,\n")]
    [InlineData("LABEL;Species;Length;width;thickness;count;faces;grain;cup;bow;twist;defects;note\nW1;walnut;14,375;2,125;0,875;3;one face;quarter;1/16;;;\"knot 4-5; check 0-1\";from the gate, old\n")]
    [InlineData("note\tspecies\tlength\twidth\tthickness\tlabel\tcount\tfaces\tgrain\tcup\tdefects\nfrom the gate, old\twalnut\t14 3/8\t2 1/8\t7/8\tW1\t3\tone face\tquarter\t1/16\tknot 4-5; check 0-1\n")]
    public void Parse_reads_commas_semicolons_tabs_quotes_marks_and_decimal_commas(string text)
    {
        AssertIsTheOffcut(Assert.Single(Read(text).Content));
        AssertIsTheOffcut(Assert.Single(Read(text.Replace("\n", "\r\n", StringComparison.Ordinal)).Content));
    }

    [Fact]
    public void Parse_reads_bare_numbers_in_the_unit_of_the_shop()
    {
        var offcut = Assert.Single(Read("label;species;length;width;thickness\n;ash;365;54,5;7/8\n", LengthUnit.Millimetre).Content);

        Assert.Equal((Length.FromMillimetres(365), Length.FromMicrometres(54_500), Length.FromInches(7, 8)), (offcut.Length, offcut.Width, offcut.Thickness));
    }

    [Fact]
    public void Parse_gives_missing_labels_that_are_free()
    {
        var pile = Read("label,species,length,width,thickness\n,walnut,9,2,1\nW1,walnut,9,2,1\n,hard maple,9,2,1\n").Content;

        Assert.Equal(["W2", "W1", "HM1"], pile.Select(offcut => offcut.Label));
    }

    [Fact]
    public void Parse_names_each_missing_and_unknown_column()
    {
        var problems = Refused("label,specie,length,width,colour\nW1,walnut,9,2,1\n").Problems;

        Assert.Contains(problems, p => (p.Line, p.Column, p.Found) == (1, 7, "specie") && p.Expected.EndsWith("maybe species", StringComparison.Ordinal));
        Assert.Contains(problems, p => (p.Line, p.Found) == (1, "colour"));
        Assert.Contains(problems, p => p.Expected == FileMessages.TheColumn("species"));
        Assert.Contains(problems, p => p.Expected == FileMessages.TheColumn("thickness"));
        Assert.Equal(4, problems.Length);
    }

    [Theory]
    [InlineData("W2,wallnut,9,2,1", 4, "wallnut")]
    [InlineData("W2,frobwood,9,2,1", 4, "frobwood")]
    [InlineData("W2,walnut,-9,2,1", 11, "-9")]
    [InlineData("W2,walnut,0,2,1", 11, "0")]
    [InlineData("W2,walnut,,2,1", 11, "")]
    [InlineData("W2,walnut,9 frob,2,1", 13, "9 frob")]
    [InlineData("W2,walnut,9,2,1,0", 17, "0")]
    [InlineData("W2,walnut,9,2,1,two", 17, "two")]
    [InlineData("W2,walnut,9,2,1,,shiny", 18, "shiny")]
    [InlineData("W2,walnut,9,2,1,,,wavy", 19, "wavy")]
    [InlineData("W2,walnut,9,2,1,,,,-1/16", 20, "-1/16")]
    [InlineData("W2,walnut,9,2,1,,,,,,,knot", 23, "knot")]
    [InlineData("W2,walnut,9,2,1,,,,,,,knot 9-10", 28, "9-10")]
    [InlineData("W2,walnut,9,2,1,,,,,,,blob 1-2", 23, "blob")]
    [InlineData("W 2,walnut,9,2,1", 1, "W 2")]
    [InlineData("W1,walnut,9,2,1", 1, "W1")]
    [InlineData("w1,walnut,9,2,1", 1, "w1")]
    [InlineData("W2,walnut,9,2,1,,,,,,,,,extra", 25, "extra")]
    [InlineData("W2,\"walnut,9,2,1", 4, "\"walnut,9,2,1")]
    [InlineData("W2,\"walnut\" x,9,2,1", 4, "\"walnut\" x,9,2,1")]
    public void Parse_refuses_a_row_with_its_place_and_takes_nothing(string row, int column, string found)
    {
        var problem = Assert.Single(Refused(Names + "W1,walnut,9,2,1\n\n" + row + "\n").Problems);

        Assert.Equal((PileFile.Name, 4, column, found), (problem.File, problem.Line, problem.Column, problem.Found));
        Assert.NotEmpty(problem.Expected);
    }

    [Fact]
    public void Parse_suggests_a_species_and_names_both_lines_of_a_label()
    {
        Assert.Contains("maybe walnut", Refused(Names + "W1,wallnut,9,2,1").Problems[0].Expected, StringComparison.Ordinal);
        Assert.Contains("line 2 has it too", Refused(Names + "W1,ash,9,2,1\nW1,ash,9,2,1").Problems[0].Expected, StringComparison.Ordinal);
        Assert.Contains("line 2 has it too", Refused(Names + "W1,ash,9,2,1,3\nW1b,ash,9,2,1").Problems[0].Expected, StringComparison.Ordinal);
    }

    [Fact]
    public void Parse_reports_every_problem_of_a_file_up_to_fifty_and_counts_the_rest()
    {
        var refused = Refused(Names + string.Concat(Enumerable.Repeat(",frob,9,2,0\n", 40)));

        Assert.Equal((50, 30), (refused.Problems.Length, refused.More));
        Assert.Equal([(2, 2), (2, 11), (3, 2), (3, 11)], refused.Problems.Take(4).Select(p => (p.Line, p.Column)));
    }

    [Fact]
    public void Parse_asks_back_about_absurd_sizes()
    {
        var read = Read(Names + "W1,walnut,40 m,2,1\nW2,walnut,9,1,2\n");

        Assert.Equal([2, 3], read.Doubts.Select(doubt => doubt.Line).Order());
        Assert.Equal(Length.FromMillimetres(40_000), read.Content[0].Length);
        Assert.Equal((Length.FromInches(2), Length.FromInches(1)), (read.Content[1].Width, read.Content[1].Thickness));
    }

    [Fact]
    public void Parse_says_that_a_file_is_empty()
    {
        Assert.Equal(FileMessages.SomeRows, Assert.Single(Refused("").Problems).Expected);
        Assert.Equal(FileMessages.SomeRows, Assert.Single(Refused("\r\n \r\n").Problems).Expected);
        Assert.Empty(Read(Names).Content);
    }

    [Fact]
    public void Parse_refuses_other_encodings_and_says_which_is_expected()
    {
        const string Text = Names + "W1,walnut,9,2,1\n";

        foreach (var encoding in new[] { Encoding.Unicode, Encoding.BigEndianUnicode })
        {
            Assert.Equal(("UTF-16 text", FileMessages.Utf8), Only(encoding.GetBytes(Text)));
            Assert.Equal(("UTF-16 text", FileMessages.Utf8), Only([.. encoding.GetPreamble(), .. encoding.GetBytes(Text)]));
        }

        var latin = Assert.Single(Refused(Encoding.Latin1.GetBytes(Names + "W1,walnut,9½,2,1\n")).Problems);
        Assert.Equal((2, 12, "byte BD", FileMessages.Utf8), (latin.Line, latin.Column, latin.Found, latin.Expected));

        static (string, string) Only(byte[] bytes)
        {
            var problem = Assert.Single(Refused(bytes).Problems);
            return (problem.Found, problem.Expected);
        }
    }

    [Fact]
    public void Parse_refuses_nul_bytes_with_their_place()
    {
        var problem = Assert.Single(Refused(Names + "W1,wal\0nut,9,2,1\n").Problems);

        Assert.Equal((2, 7, "U+0000", FileMessages.PlainText), (problem.Line, problem.Column, problem.Found, problem.Expected));
    }

    [Fact]
    public void Parse_refuses_megabytes_of_garbage_fast()
    {
        var garbage = new byte[10_000_000];
        new Random(1).NextBytes(garbage);
        var clock = System.Diagnostics.Stopwatch.StartNew();

        Assert.Equal(FileMessages.SmallerFile, Assert.Single(Refused(garbage).Problems).Expected);
        Assert.NotEmpty(Refused(garbage[..4_000_000]).Problems);
        Assert.NotEmpty(Refused(new string('x', 4_000_000)).Problems);
        Assert.NotEmpty(Refused(Names + new string('"', 3_999_999)).Problems);
        Assert.NotEmpty(Refused(Names + string.Concat(Enumerable.Repeat("x,\n", 1_000_000))).Problems);
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(10), $"took {clock.Elapsed}");
    }

    [Fact]
    public void Write_is_read_back_to_the_same_pile() => Piles.Sample(pile =>
    {
        foreach (var unit in Enum.GetValues<LengthUnit>())
        {
            var read = Read(PileFile.Write(pile, unit), LengthUnit.Inch).Content;

            Assert.Equal(pile.Select(o => o with { Defects = [] }), read.Select(o => o with { Defects = [] }));
            Assert.Equal(pile.SelectMany(o => o.Defects), read.SelectMany(o => o.Defects));
        }
    }, iter: 200);

    private static readonly Gen<ImmutableArray<Offcut>> Piles =
        (from sizes in Gen.Long[1, 900_000_000_000].Array[4]
         from species in Gen.Int[0, SpeciesTable.All.Length - 1]
         from count in Gen.Int[1, 4]
         from faces in Gen.Enum<Faces>()
         from rings in Gen.Enum<RingOrientation>()
         from kind in Gen.Enum<DefectKind>()
         from note in Gen.Char["ab ,;\"'½="].Array[0, 12]
         select new Offcut
         {
             Label = "L",
             Species = SpeciesTable.All[species].Key,
             Length = Length.FromPicometres(sizes[0]),
             Width = Length.FromPicometres(Math.Max(sizes[1], sizes[2])),
             Thickness = Length.FromPicometres(Math.Min(sizes[1], sizes[2])),
             Count = count,
             Faces = faces,
             Rings = rings,
             Bow = Length.FromPicometres(sizes[3]),
             Defects = [new Defect(kind, Length.Zero, Length.FromPicometres(sizes[0] / 2))],
             Note = new string(note).Trim(),
         }).Array[0, 8].Select(offcuts => offcuts.Select((offcut, i) => offcut with { Label = $"L{i}" }).ToImmutableArray());
}
