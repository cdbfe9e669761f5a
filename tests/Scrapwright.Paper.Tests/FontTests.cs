using Scrapwright.Core.Sheets;

namespace Scrapwright.Paper.Tests;

public sealed class FontTests
{
    [Theory]
    [InlineData("OpenSans-Regular", false)]
    [InlineData("OpenSans-Bold", true)]
    public void Advance_table_is_that_of_the_embedded_font(string face, bool bold)
    {
        var font = new TrueTypeFont(Read(face));

        var advances = font.Advances();

        Assert.Equal(FontAdvances.UnitsPerEm, font.UnitsPerEm);
        Assert.True(advances.Count > 900);
        foreach (var (character, advance) in advances)
        {
            Assert.True(FontAdvances.Has(character), $"U+{character:X4} is missing in advances.txt.");
            // At 72/25.4 pt per em of 2048 units, one unit is 1/2048 mm.
            Assert.Equal(advance / 2048.0, FontAdvances.WidthMm(char.ConvertFromUtf32(character), 72 / 25.4, bold), 1e-9);
        }
    }

    [Theory]
    [InlineData("OpenSans-Regular")]
    [InlineData("OpenSans-Bold")]
    public void Capital_height_is_that_of_the_font(string face) =>
        Assert.Equal(new TrueTypeFont(Read(face)).CapitalHeight / 2048.0, FontAdvances.CapitalMm(72 / 25.4), 1e-9);

    [Fact]
    public void Figures_are_all_equally_wide_in_both_weights()
    {
        foreach (var bold in new[] { false, true })
            Assert.Single("0123456789".Select(c => FontAdvances.WidthMm(c.ToString(), 10, bold)).Distinct());
    }

    [Theory]
    [InlineData("≥×°⁄−·≈÷Ø–…½")]
    public void Font_has_the_signs_the_sheets_use(string signs) => Assert.All(signs, c => Assert.True(FontAdvances.Has(c), $"{c}"));

    private static byte[] Read(string face)
    {
        using var stream = typeof(PdfWriter).Assembly.GetManifestResourceStream($"Scrapwright.Paper.Fonts.{face}.ttf")!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
