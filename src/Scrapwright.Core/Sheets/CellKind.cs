namespace Scrapwright.Core.Sheets;

/// <summary>What is drawn in a cell.</summary>
internal enum CellKind
{
    /// <summary>Text on as many lines as it needs.</summary>
    Text,

    /// <summary>A box to tick.</summary>
    TickBox,

    /// <summary>A box to write a reading in.</summary>
    PencilBox,

    /// <summary>A small field with the species' hatch, and its name.</summary>
    Swatch,
}
