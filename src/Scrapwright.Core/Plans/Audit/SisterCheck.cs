namespace Scrapwright.Core.Plans.Audit;

/// <summary>Strips that are said to be sisters against the pieces that are really glued: layers side by side in one stick, from the same stretch of it, one of them turned over.</summary>
internal sealed class SisterCheck(Findings findings)
{
    /// <summary>Looks at every strip of a glue-up. Whether the pairs lie mirrored is for the looks level.</summary>
    public void Check(GlueUp glueUp, LivePiece[] live, string where)
    {
        if (live.Length != glueUp.Strips.Length) return;
        for (var i = 0; i < live.Length; i++)
        {
            var strip = glueUp.Strips[i];
            var at = $"{where} strip {strip.Piece}";
            if (strip.Sister.Length == 0)
            {
                findings.Require(!strip.TurnedOver, at + " turned over", "without a sister", "as it comes");
                continue;
            }

            var other = Array.FindIndex(live, l => l.Piece.Id == strip.Sister);
            if (other < 0 || other == i)
            {
                findings.Add(at + " sister", strip.Sister, "another strip of the glue-up");
                continue;
            }

            var sister = glueUp.Strips[other];
            findings.Equal($"{where} sister of {sister.Piece}", sister.Sister, strip.Piece);
            findings.Require(live[i].IsSisterOf(live[other]), at + " sister", strip.Sister, "the layer beside it in its stick, from the same stretch");
            findings.Require(strip.TurnedOver != sister.TurnedOver, at + " turned over", $"{strip.TurnedOver} as its sister", "one of the two");
        }
    }
}
