namespace Scrapwright.Core.Sheets;

/// <summary>A size of paper, upright, with the margin that printers leave white.</summary>
public sealed record PaperSize
{
    private PaperSize(string name, double widthMm, double heightMm) => (Name, WidthMm, HeightMm) = (name, widthMm, heightMm);

    /// <summary>Letter, 8.5 × 11 in (ANSI/ASME Y14.1 size A, upright).</summary>
    public static PaperSize Letter { get; } = new("Letter", 215.9, 279.4);

    /// <summary>A4, 210 × 297 mm (ISO 216).</summary>
    public static PaperSize A4 { get; } = new("A4", 210, 297);

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Width. [mm]</summary>
    public double WidthMm { get; }

    /// <summary>Height. [mm]</summary>
    public double HeightMm { get; }

    /// <summary>White margin on every side. [mm]</summary>
    public double MarginMm { get; } = 12.7;

    /// <summary>The frame that may be drawn in.</summary>
    public Frame Inside => new Frame(0, 0, WidthMm, HeightMm).Inset(MarginMm);
}
