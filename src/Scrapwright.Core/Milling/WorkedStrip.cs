using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Milling;

/// <summary>A strip as milling is expected to leave it, with the passes that its size hangs on.</summary>
/// <param name="Thickness">Expected thickness, before strips are planed alike.</param>
/// <param name="Width">Expected net width.</param>
/// <param name="Faces">The pass over its faces.</param>
/// <param name="Edges">The pass over its edges.</param>
public sealed record WorkedStrip(Length Thickness, Length Width, Pass Faces, Pass Edges)
{
    /// <summary>The pass over the faces of the strip it is a layer of, with this layer's share of the spread; null when it was not resawn. <see cref="Faces"/> is then its clean-up.</summary>
    public Pass? Before { get; init; }
}
