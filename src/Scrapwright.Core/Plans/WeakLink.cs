using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;

namespace Scrapwright.Core.Plans;

/// <summary>The size of a gift that is likeliest to be missed, and what would help.</summary>
/// <param name="Where">Id of the glue-up, or of the strip of a board run.</param>
/// <param name="Size">Which of its sizes.</param>
/// <param name="Strip">Id of the strip it hangs on: the thinnest for a thickness, the narrowest for a width; empty for a length.</param>
/// <param name="ChancePerMille">Chance of that size, in thousandths rounded down.</param>
/// <param name="More">So much more of that size in the strip (for a length, in all strips)…</param>
/// <param name="GiftPerMilleThen">…and the gift's chance is this, in thousandths rounded down.</param>
public sealed record WeakLink(string Where, SizeKind Size, string Strip, int ChancePerMille, Length More, int GiftPerMilleThen);
