using CsCheck;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Pile;

public sealed partial class EntryLineTests
{
    private static readonly Gen<Length> Sizes = Gen.OneOf(
        Gen.Int[1, 30 * 64].Select(n => Length.FromInches(n, 64)),
        Gen.Int[1, 900_000].Select(n => Length.FromMicrometres(n)),
        Gen.Long[1, 900_000_000_000].Select(Length.FromPicometres));

    private static readonly Gen<string> Labels = Gen.OneOf(
        Gen.Char["ABCWXx019-"].Array[1, 12].Select(c => new string(c)).Where(text => PileLabels.IsValid(text)),
        OneOf("ash", "Note", "x3", "W3", "14", "", "1-8"));

    private static readonly Gen<string> Notes = Gen.OneOf(
        Gen.Char["ab x3;:,(\"½é-#"].Array[0, 20].Select(c => new string(c).Trim()),
        OneOf("", "note: x", "walnut 14 x 2", ": odd"));

    private static readonly Gen<Offcut> Offcuts =
        from sizes in Sizes.Array[6]
        from label in Labels
        from species in OneOf([.. SpeciesTable.All])
        from count in Gen.OneOf(Gen.Const(1), Gen.Int[1, 999])
        from faces in Gen.Enum<Faces>()
        from rings in Gen.Enum<RingOrientation>()
        from warp in Gen.Bool.Array[3]
        from kinds in Gen.Enum<DefectKind>().Array[0, 3]
        from places in Gen.Double[0, 0.999].Array[6]
        from across in Gen.Double[0, 0.999].Array[6]
        from manners in Gen.Select(Gen.Bool, Gen.Bool).Array[3]
        from note in Notes
        select new Offcut
        {
            Label = label,
            Species = species.Key,
            Length = sizes[0],
            Width = Length.Max(sizes[1], sizes[2]),
            Thickness = Length.Min(sizes[1], sizes[2]),
            Count = count,
            Faces = faces,
            Rings = rings,
            Cup = warp[0] ? sizes[3] : Length.Zero,
            Bow = warp[1] ? sizes[4] : Length.Zero,
            Twist = warp[2] ? sizes[5] : Length.Zero,
            Defects = [.. kinds.Select((kind, i) => new Defect(kind, At(sizes[0], Math.Min(places[2 * i], places[(2 * i) + 1])), At(sizes[0], Math.Max(places[2 * i], places[(2 * i) + 1])))
            {
                Across = manners[i].Item1 ? Across(Length.Max(sizes[1], sizes[2]), across[2 * i], across[(2 * i) + 1]) : null,
                IsKept = manners[i].Item2,
            })],
            Note = note,
        };

    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static WidthStretch Across(Length width, double one, double other) => new(At(width, Math.Min(one, other)), At(width, Math.Max(one, other)));

    private static Length At(Length length, double share) => Length.FromPicometres((long)(length.Picometres * share));

    [Fact]
    public void Write_is_read_back_to_the_same_offcut() =>
        Gen.Select(Offcuts, Gen.Enum<LengthUnit>(), Gen.Enum<LengthUnit>()).Sample((offcut, unit, shopUnit) =>
        {
            var line = EntryLine.Write(offcut, unit);

            var read = Understood(line, shopUnit).Offcut;

            Assert.Equal(offcut with { Defects = [] }, read with { Defects = [] });
            Assert.Equal(offcut.Defects, read.Defects);
        });

    [Fact]
    public void Every_species_is_read_back_by_its_short_name_as_itself()
    {
        foreach (var species in SpeciesTable.All)
        {
            var reading = Understood($"{species.Name} 14 x 2 x 7/8");

            Assert.Equal(species.Key, reading.Offcut.Species);
        }
    }

    [Fact]
    public void Parse_never_throws_and_points_into_the_line() =>
        Gen.Char["walnutfsipckoek 0123456789/.,-x×½'\"#():;&@µ\t\0\ud83c"].Array[0, 60].Select(c => new string(c)).Sample(line =>
        {
            switch (EntryLine.Parse(line, LengthUnit.Inch))
            {
                case EntryOutcome.Understood understood:
                    Assert.True(understood.Offcut.Length.IsPositive && understood.Offcut.Thickness.IsPositive && understood.Offcut.Width >= understood.Offcut.Thickness);
                    Assert.All(understood.Offcut.Defects, d => Assert.True(d.From <= d.To && d.To <= understood.Offcut.Length));
                    break;
                case EntryOutcome.NotUnderstood not:
                    Assert.NotEmpty(not.Problems);
                    Assert.All(not.Problems, p => Assert.InRange(p.Column, 1, line.Length + 1));
                    break;
            }
        });

    [Fact]
    public void Parse_of_words_a_maker_uses_never_throws() =>
        OneOf("walnut", "ash", "14", "2", "7/8", "x", "x3", "knot", "4-5", "and", ",", "cup", "1/16", "last", "at", "(3)", "one", "face", "flat", "sawn", "by", "mm", "-", "W3:", ";", "36,5", "long", "from", "the", "end", "wallnut", "hrad", "maple", "3", "pcs")
            .Array[0, 14].Select(words => string.Join(' ', words)).Sample(line =>
        {
            if (EntryLine.Parse(line, LengthUnit.Inch) is EntryOutcome.NotUnderstood not) Assert.NotEmpty(not.Problems);
        });
}
