namespace Scrapwright.Core.Sheets;

/// <summary>One cell of a table row.</summary>
/// <param name="Text">What it says; a species key for a swatch.</param>
/// <param name="SizePt">Size of the letters. [pt]</param>
/// <param name="Bold">True for heavy letters.</param>
/// <param name="Kind">What is drawn.</param>
internal sealed record Cell(string Text, double SizePt = 10, bool Bold = false, CellKind Kind = CellKind.Text)
{
    internal static Cell None { get; } = new("");

    internal static Cell Tick { get; } = new("", Kind: CellKind.TickBox);

    internal static Cell Pencil { get; } = new("", Kind: CellKind.PencilBox);
}
