using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Pile;

public sealed partial class EntryLineTests
{
    private static EntryOutcome.Understood Understood(string line, LengthUnit unit = LengthUnit.Inch)
    {
        var outcome = EntryLine.Parse(line, unit);
        return outcome is EntryOutcome.Understood understood
            ? understood
            : throw new Xunit.Sdk.XunitException($"{line}: {string.Join(" | ", ((EntryOutcome.NotUnderstood)outcome).Problems)}");
    }

    private static EntryOutcome.NotUnderstood NotUnderstood(string line, LengthUnit unit = LengthUnit.Inch) =>
        Assert.IsType<EntryOutcome.NotUnderstood>(EntryLine.Parse(line, unit));

    private static Length In(long n, long d = 1) => Length.FromInches(n, d);

    [Fact]
    public void Parse_reads_the_line_of_the_guide()
    {
        var offcut = Understood("walnut 14 3/8 x 2 1/8 x 7/8 x3, cupped 1/16, knot 4-5").Offcut;

        Assert.Equal(("black-walnut", In(115, 8), In(17, 8), In(7, 8), 3), (offcut.Species, offcut.Length, offcut.Width, offcut.Thickness, offcut.Count));
        Assert.Equal(In(1, 16), offcut.Cup);
        Assert.Equal([new Defect(DefectKind.Knot, In(4), In(5))], offcut.Defects);
        Assert.Equal(Faces.Rough, offcut.Faces);
    }

    [Theory]
    [InlineData("walnut 14 x 2 x 7/8")]
    [InlineData("14x2x7/8 walnut")]
    [InlineData("14 × 2 × 7/8 Walnut")]
    [InlineData("14*2*7/8 walnuts")]
    [InlineData("walnut 14 by 2 by 7/8")]
    [InlineData("walnut 14, 2, 7/8")]
    [InlineData("walnut,14,2,7/8")]
    [InlineData("walnut\t14\" x 2\" x 7/8\"")]
    [InlineData("walnut 14 in x 2 in x .875 in")]
    [InlineData("walnut 14” x 2” x ⅞”")]
    [InlineData("WALNUT 14X2X7/8")]
    [InlineData("black walnut: 14 long, 2 wide, 7/8 thick")]
    [InlineData("2 wide 14 long 7/8 thick walnut")]
    [InlineData("14\"L x 2\"W x 7/8\"T walnut board")]
    [InlineData("a small bit of walnut - 14 x 2 x 7/8")]
    [InlineData("a piece of walnut 1' 2\" x 2\" x 7/8\"")]
    [InlineData("walnut 14 x 7/8 x 2")]
    [InlineData("walnut 7/8 x 2 x 14")]
    [InlineData("7/8 walnut, 14 x 2")]
    [InlineData("walnut 35.56 x 5.08 x 2.2225 cm")]
    [InlineData("walnut 35,56 x 5,08 x 2,2225 cm")]
    [InlineData("walnut 355.6 mm x 2 x 7/8")]
    public void Parse_takes_sizes_and_species_in_any_shape(string line)
    {
        var offcut = Understood(line).Offcut;

        Assert.Equal(("black-walnut", In(14), In(2), In(7, 8), 1), (offcut.Species, offcut.Length, offcut.Width, offcut.Thickness, offcut.Count));
    }

    [Theory]
    [InlineData("ash 14,2,1", 14, 2, 1)]
    [InlineData("ash 14 2 1", 14, 2, 1)]
    [InlineData("ash 14 3/8 2 1/8 7/8", 14.375, 2.125, .875)]
    [InlineData("ash 2 x 2 x 14", 14, 2, 2)]
    [InlineData("ash 2 x 6 x 1", 2, 6, 1)]
    public void Parse_separates_three_numbers(string line, double length, double width, double thickness)
    {
        var offcut = Understood(line).Offcut;

        Assert.Equal(Length.FromInchesRounded(length), offcut.Length);
        Assert.Equal(Length.FromInchesRounded(width), offcut.Width);
        Assert.Equal(Length.FromInchesRounded(thickness), offcut.Thickness);
    }

    [Theory]
    [InlineData("walnut 14x2x1 x3")]
    [InlineData("walnut 14x2x1x3")]
    [InlineData("walnut 14x2x1, x 3")]
    [InlineData("3x walnut 14x2x1")]
    [InlineData("3 x walnut 14x2x1")]
    [InlineData("3x 14 x 2 x 1 walnut")]
    [InlineData("3 walnut 14x2x1")]
    [InlineData("3 pcs walnut 14x2x1")]
    [InlineData("walnut 14x2x1 3 pieces")]
    [InlineData("walnut 14x2x1 (3)")]
    [InlineData("walnut 14x2x1 (x3)")]
    [InlineData("three walnut 14x2x1")]
    [InlineData("three pieces of walnut 14x2x1")]
    [InlineData("walnut 14x2x1, 3 off")]
    [InlineData("walnut 14x2x1 qty 3")]
    [InlineData("walnut 14x2x1 count: 3")]
    public void Parse_finds_the_count(string line)
    {
        var offcut = Understood(line).Offcut;

        Assert.Equal((In(14), In(2), In(1), 3), (offcut.Length, offcut.Width, offcut.Thickness, offcut.Count));
    }

    [Theory]
    [InlineData("W3: walnut 14x2x1", "W3")]
    [InlineData("#W3 walnut 14x2x1", "W3")]
    [InlineData("walnut 14x2x1 #W3-b", "W3-b")]
    [InlineData("W3 walnut 14x2x1", "W3")]
    [InlineData("7: walnut 14x2x1", "7")]
    [InlineData("walnut 14x2x1", null)]
    [InlineData("walnut: 14x2x1", null)]
    [InlineData("x3 walnut 14x2x1", null)]
    public void Parse_finds_the_label(string line, string? label) => Assert.Equal(label, Understood(line).Label);

    [Theory]
    [InlineData("rough", Faces.Rough)]
    [InlineData("rough sawn", Faces.Rough)]
    [InlineData("s2s", Faces.BothSurfaced)]
    [InlineData("S4S", Faces.BothSurfaced)]
    [InlineData("planed", Faces.BothSurfaced)]
    [InlineData("surfaced both faces", Faces.BothSurfaced)]
    [InlineData("both faces planed", Faces.BothSurfaced)]
    [InlineData("one face", Faces.OneSurfaced)]
    [InlineData("1 face surfaced", Faces.OneSurfaced)]
    [InlineData("surfaced one side", Faces.OneSurfaced)]
    [InlineData("s1s", Faces.OneSurfaced)]
    public void Parse_finds_the_faces(string words, Faces faces)
    {
        Assert.Equal(faces, Understood($"walnut 14 x 2 x 7/8, {words}").Offcut.Faces);
        Assert.Equal(faces, Understood($"{words} walnut 14 x 2 x 7/8").Offcut.Faces);
    }

    [Theory]
    [InlineData("quarter sawn", RingOrientation.Quarter)]
    [InlineData("quartersawn", RingOrientation.Quarter)]
    [InlineData("Quarter-Sawn", RingOrientation.Quarter)]
    [InlineData("flat sawn", RingOrientation.Flat)]
    [InlineData("plain sawn", RingOrientation.Flat)]
    [InlineData("rift", RingOrientation.Rift)]
    public void Parse_finds_the_rings(string words, RingOrientation rings) =>
        Assert.Equal(rings, Understood($"white oak 14 x 2 x 7/8 {words}").Offcut.Rings);

    [Theory]
    [InlineData("cupped 1/16, bow 1/8, twisted 3 mm")]
    [InlineData("cup 1/16 bowed 1/8 twist 3mm")]
    [InlineData("cup: 1/16, bow=1/8, twist by 3 mm")]
    [InlineData("1/16 cup, 1/8 bow, 3 mm twist")]
    public void Parse_finds_the_warp(string words)
    {
        var offcut = Understood($"ash 14 x 2 x 7/8, {words}").Offcut;

        Assert.Equal((In(1, 16), In(1, 8), Length.FromMillimetres(3)), (offcut.Cup, offcut.Bow, offcut.Twist));
    }

    [Theory]
    [InlineData("knot 4-5", DefectKind.Knot, 4, 5)]
    [InlineData("knot 4 to 5", DefectKind.Knot, 4, 5)]
    [InlineData("knot 4-5 near the end", DefectKind.Knot, 4, 5)]
    [InlineData("small knot 4-5 from the marked end", DefectKind.Knot, 4, 5)]
    [InlineData("knot from 4 to 5", DefectKind.Knot, 4, 5)]
    [InlineData("knot 5-4", DefectKind.Knot, 4, 5)]
    [InlineData("knot 4\" - 5\"", DefectKind.Knot, 4, 5)]
    [InlineData("knot 4–5", DefectKind.Knot, 4, 5)]
    [InlineData("knot at 7", DefectKind.Knot, 6.5, 7.5)]
    [InlineData("knot at 1/4", DefectKind.Knot, 0, .75)]
    [InlineData("knot at 14", DefectKind.Knot, 13.5, 14)]
    [InlineData("check 0-1 1/2", DefectKind.Check, 0, 1.5)]
    [InlineData("nail hole at 3", DefectKind.NailHole, 2.5, 3.5)]
    [InlineData("split last 2", DefectKind.Check, 12, 14)]
    [InlineData("split in the last 2", DefectKind.Check, 12, 14)]
    [InlineData("split first 2", DefectKind.Check, 0, 2)]
    [InlineData("sapwood 0-3", DefectKind.Sapwood, 0, 3)]
    [InlineData("rot 0-3", DefectKind.Decay, 0, 3)]
    [InlineData("wane 10-14", DefectKind.Wane, 10, 14)]
    [InlineData("knot 101.6-127 mm", DefectKind.Knot, 4, 5)]
    public void Parse_finds_a_defect(string words, DefectKind kind, double from, double to)
    {
        var defect = Assert.Single(Understood($"ash 14 x 2 x 7/8, {words}").Offcut.Defects);

        Assert.Equal(new Defect(kind, Length.FromInchesRounded(from), Length.FromInchesRounded(to)), defect);
    }

    [Theory]
    [InlineData("knots 2-3 and 8-9")]
    [InlineData("knots 2-3, 8-9")]
    [InlineData("knot 2-3, knot 8-9")]
    public void Parse_finds_several_defects(string words)
    {
        var defects = Understood($"ash {words}, 14 x 2 x 7/8").Offcut.Defects;

        Assert.Equal([new Defect(DefectKind.Knot, In(2), In(3)), new Defect(DefectKind.Knot, In(8), In(9))], defects);
    }

    [Theory]
    [InlineData("knot 4-5 across 0-1/2", 4, 5, 0d, .5, false)]
    [InlineData("knot 4-5 across last 1/2", 4, 5, 1.5, 2d, false)]
    [InlineData("knot 4-5 across the first 3/4 keep", 4, 5, 0d, .75, true)]
    [InlineData("sapwood across 0-1/4", 0, 14, 0d, .25, false)]
    [InlineData("sapwood across last 6 mm", 0, 14, 1.7637795275590551, 2d, false)]
    [InlineData("knot at 7 across at 1", 6.5, 7.5, .5, 1.5, false)]
    [InlineData("knot 4-5 kept, 2 wide", 4, 5, null, null, true)]
    [InlineData("knot 4-5 keep", 4, 5, null, null, true)]
    public void Parse_finds_where_a_defect_lies_across_and_whether_it_stays(string words, double from, double to, double? acrossFrom, double? acrossTo, bool isKept)
    {
        var line = words.EndsWith("wide", StringComparison.Ordinal) ? $"ash 14 long x 7/8 thick, {words}" : $"ash 14 x 2 x 7/8, {words}";
        var defect = Assert.Single(Understood(line).Offcut.Defects);

        var across = acrossFrom is { } f && acrossTo is { } t ? new WidthStretch(Length.FromInchesRounded(f), Length.FromInchesRounded(t)) : null;
        Assert.Equal(new Defect(defect.Kind, Length.FromInchesRounded(from), Length.FromInchesRounded(to)) { Across = across, IsKept = isKept }, defect);
    }

    [Fact]
    public void Parse_reads_across_and_keep_for_all_the_places_before()
    {
        var defects = Understood("ash 14 x 2 x 7/8, knots 2-3 and 8-9 across 0-1 keep, check 0-1").Offcut.Defects;

        Assert.Equal([true, true, false], defects.Select(d => d.IsKept));
        Assert.Equal([new WidthStretch(Length.Zero, In(1)), new WidthStretch(Length.Zero, In(1)), null], defects.Select(d => d.Across));
    }

    [Theory]
    [InlineData("; from the old gate, x3", "from the old gate, x3")]
    [InlineData("note: smells nice", "smells nice")]
    [InlineData("(under the bench)", "under the bench")]
    [InlineData("curly", "curly")]
    [InlineData(", no knots", "no knots")]
    [InlineData("- not cupped - clear", "not cupped; clear")]
    [InlineData("curly; shelf 2", "curly; shelf 2")]
    public void Parse_keeps_the_note(string words, string note) =>
        Assert.Equal(note, Understood($"ash 14 x 2 x 7/8 {words}").Offcut.Note);

    [Fact]
    public void Parse_reads_bare_numbers_in_the_unit_of_the_shop_and_bare_fractions_in_inches()
    {
        var offcut = Understood("Esche 365 x 54 x 7/8, cup 1,5".Replace("Esche", "ash", StringComparison.Ordinal), LengthUnit.Millimetre).Offcut;

        Assert.Equal((Length.FromMillimetres(365), Length.FromMillimetres(54), In(7, 8)), (offcut.Length, offcut.Width, offcut.Thickness));
        Assert.Equal(Length.FromMicrometres(1500), offcut.Cup);
    }

    [Theory]
    [InlineData("hard maple", "sugar-maple")]
    [InlineData("old-growth redwood", "old-growth-redwood")]
    [InlineData("Yellow-poplar", "yellow-poplar")]
    [InlineData("doug fir", "coast-douglas-fir")]
    [InlineData("cherries", "black-cherry")]
    public void Parse_finds_species_of_several_words(string name, string key) =>
        Assert.Equal(key, Understood($"{name} 14 x 2 x 7/8").Offcut.Species);
}
