using System.Xml.Linq;
using Scrapwright.Core.Sheets;

namespace Scrapwright.Core.Tests.Sheets;

/// <summary>What must hold of every sheet and drawing.</summary>
public static class SheetRules
{
    private const double SlackMm = 0.01;

    public static void AssertInsideMargins(Sheet sheet)
    {
        foreach (var mark in sheet.AllMarks)
            Assert.True(sheet.Paper.Inside.Holds(mark.Bounds, SlackMm), $"{sheet.Title}: {Describe(mark)} leaves the margins.");
    }

    public static void AssertInside(Drawing drawing)
    {
        var frame = new Frame(0, 0, drawing.WidthMm, drawing.HeightMm);
        foreach (var mark in drawing.AllMarks) Assert.True(frame.Holds(mark.Bounds, SlackMm), $"{drawing.Title}: {Describe(mark)} leaves the drawing.");
    }

    /// <summary>No two texts touch: a fifth of a millimetre of shared ink would be seen.</summary>
    public static void AssertNoTextOverlaps(string title, IEnumerable<Mark> marks)
    {
        var texts = marks.OfType<Mark.Text>().Select(t => (Text: t, t.Bounds)).OrderBy(t => t.Bounds.TopMm).ToArray();
        for (var i = 0; i < texts.Length; i++)
            for (var j = i + 1; j < texts.Length && texts[j].Bounds.TopMm < texts[i].Bounds.BottomMm; j++)
                Assert.False(
                    texts[i].Bounds.Overlaps(texts[j].Bounds, 0.2),
                    $"{title}: “{texts[i].Text.Letters}” and “{texts[j].Text.Letters}” overlap: {texts[i].Bounds} {texts[j].Bounds}.");
    }

    /// <summary>The file is well-formed XML with a title, a description, real units and nothing that is not a number where one belongs.</summary>
    public static XElement AssertWellFormed(string svg, double widthMm, double heightMm)
    {
        var root = XDocument.Parse(svg).Root!;
        XNamespace ns = "http://www.w3.org/2000/svg";
        Assert.Equal(ns + "svg", root.Name);
        Assert.Equal(FormattableString.Invariant($"{widthMm:0.###}mm"), root.Attribute("width")!.Value);
        Assert.Equal(FormattableString.Invariant($"{heightMm:0.###}mm"), root.Attribute("height")!.Value);
        Assert.NotEmpty(root.Element(ns + "title")!.Value);
        Assert.NotEmpty(root.Element(ns + "desc")!.Value);
        Assert.DoesNotContain("NaN", svg, StringComparison.Ordinal);
        Assert.DoesNotContain("Infinity", svg, StringComparison.Ordinal);
        return root;
    }

    private static string Describe(Mark mark) => mark is Mark.Text text ? $"“{text.Letters}” {mark.Bounds}" : $"{mark.GetType().Name} {mark.Bounds}";
}
