namespace Scrapwright.Core.Sheets;

/// <summary>How a line is drawn. The widths are of the series of ISO 128-2: 0.18, 0.25, 0.35, 0.5, 0.7 mm.</summary>
/// <param name="WidthMm">Width of the line. [mm]</param>
/// <param name="Colour">Colour as <c>#rrggbb</c>.</param>
/// <param name="Dashed">True for dashes: hidden edges, cutting lines.</param>
public sealed record Ink(double WidthMm, string Colour = Ink.Black, bool Dashed = false)
{
    /// <summary>Black.</summary>
    public const string Black = "#000000";

    /// <summary>White.</summary>
    public const string White = "#ffffff";

    /// <summary>Hatches, dimension and extension lines.</summary>
    public static Ink Thin { get; } = new(0.18);

    /// <summary>Table rules and boxes to write in.</summary>
    public static Ink Fine { get; } = new(0.25);

    /// <summary>Outlines of parts.</summary>
    public static Ink Medium { get; } = new(0.35);

    /// <summary>What must be seen first.</summary>
    public static Ink Thick { get; } = new(0.7);

    /// <summary>Thin dashes.</summary>
    public static Ink ThinDashed { get; } = new(0.25, Black, true);
}
