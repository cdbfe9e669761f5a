using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Fits;

/// <summary>A glued line of a gift where one part moves and the other does not.</summary>
/// <param name="Gift">Label of the gift.</param>
/// <param name="Joint">The joint it belongs to.</param>
/// <param name="Line">The line, as the design declares it.</param>
/// <param name="Mismatch">How far the moving part gets ahead of the other, over the whole line, in the worst month where it lives; zero or more.</param>
/// <param name="Month">That month, 1 to 12.</param>
/// <param name="NeedsCare">True when that is more than <see cref="CrossGrain.Threshold"/>: the glue or the wood may give way.</param>
public sealed record CrossGrainJoint(string Gift, Joint Joint, GluedLine Line, Length Mismatch, int Month, bool NeedsCare);
