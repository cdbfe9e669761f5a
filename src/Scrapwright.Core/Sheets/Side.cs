namespace Scrapwright.Core.Sheets;

/// <summary>Which point of a text stands at the given place.</summary>
internal enum Side
{
    Left,
    Middle,
    Right,
}
