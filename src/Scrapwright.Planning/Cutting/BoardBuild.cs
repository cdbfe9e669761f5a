namespace Scrapwright.Planning.Cutting;

/// <summary>A rectangle put together of parts: one shape, or two rectangles end to end or side by side.</summary>
/// <param name="Length">Along the grain, a kerf included. [marks]</param>
/// <param name="Width">Across the grain, a kerf included. [marks]</param>
internal abstract record BoardBuild(long Length, long Width)
{
    /// <summary>One part.</summary>
    internal sealed record One(BoardShape Shape) : BoardBuild(Shape.Length, Shape.Width);

    /// <summary>Two, one after the other along the grain: a crosscut parts them.</summary>
    internal sealed record EndToEnd(BoardBuild First, BoardBuild Second) : BoardBuild(First.Length + Second.Length, Math.Max(First.Width, Second.Width));

    /// <summary>Two beside each other across the grain: a rip parts them.</summary>
    internal sealed record SideBySide(BoardBuild First, BoardBuild Second) : BoardBuild(Math.Max(First.Length, Second.Length), First.Width + Second.Width);
}
