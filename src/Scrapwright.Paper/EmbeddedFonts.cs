using PdfSharp.Fonts;
using Scrapwright.Core.Sheets;

namespace Scrapwright.Paper;

/// <summary>Gives the PDF package the two fonts that are built in, on every system.</summary>
internal sealed class EmbeddedFonts : IFontResolver
{
    private const string Regular = "OpenSans-Regular";
    private const string Bold = "OpenSans-Bold";
    private static readonly Lock Gate = new();

    /// <summary>Sets the resolver once for the process.</summary>
    /// <exception cref="InvalidOperationException">Someone else has set another resolver.</exception>
    internal static void Use()
    {
        lock (Gate)
        {
            if (GlobalFontSettings.FontResolver is EmbeddedFonts) return;
            if (GlobalFontSettings.FontResolver is { } other)
                throw new InvalidOperationException($"The PDF fonts are already taken by {other.GetType().FullName}.");
            GlobalFontSettings.FontResolver = new EmbeddedFonts();
        }
    }

    public FontResolverInfo? ResolveTypeface(string familyName, bool bold, bool italic) =>
        familyName == FontAdvances.Family ? new FontResolverInfo(bold ? Bold : Regular) : null;

    public byte[]? GetFont(string faceName)
    {
        using var stream = typeof(EmbeddedFonts).Assembly.GetManifestResourceStream($"Scrapwright.Paper.Fonts.{faceName}.ttf");
        if (stream is null) return null;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
