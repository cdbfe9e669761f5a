using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>Boards glued face to face against their two offcuts: one wood, each offcut in one board and nothing else, every size, and clamps enough.</summary>
internal sealed class FacedCheck(Facts facts, Findings findings)
{
    /// <summary>Looks at all boards.</summary>
    public void Check()
    {
        var taken = new HashSet<string>(StringComparer.Ordinal);
        foreach (var stated in facts.Plan.Faced)
        {
            var where = $"board {stated.Label}";
            findings.Equal(where + " label", stated.Label, $"{stated.Upper}+{stated.Lower}");
            foreach (var half in (ReadOnlySpan<string>)[stated.Upper, stated.Lower])
            {
                findings.Require(facts.Offcuts.Any(o => o.Label == half), where, $"offcut {half}", "a single offcut of the pile");
                findings.Require(taken.Add(half), where, $"offcut {half} twice", "each offcut in one board, once");
            }

            var isUsed = facts.Plan.GlueUps.Any(g => g.Strips.Any(s => s.Offcut == stated.Label)) || facts.Plan.Boards.Any(b => b.Offcut == stated.Label);
            findings.Require(isUsed, where, "no strip and no part of it is used", "a board that something is cut from");
            if (facts.FacedByLabel.TryGetValue(stated.Label, out var wood))
            {
                Compare(where, stated, wood);
            }
        }
    }

    private void Compare(string where, FacedBoard stated, FacedWood wood)
    {
        findings.Equal(where + " wood of the lower offcut", wood.Lower.Species, wood.Upper.Species);
        findings.Equal(where + " upper thickness", stated.UpperThickness, wood.UpperThickness);
        findings.Equal(where + " lower thickness", stated.LowerThickness, wood.LowerThickness);
        findings.Equal(where + " length", stated.Length, wood.Board.Length);
        findings.Equal(where + " width", stated.Width, wood.Board.Width);
        findings.Equal(where + " thickness", stated.Thickness, wood.Board.Thickness);
        findings.Require(wood.UpperThickness > Length.Zero && wood.LowerThickness > Length.Zero, where + " thickness", wood.Board.Thickness, "wood left of both");
        findings.Equal(where + " clamps", stated.ClampsNeeded, wood.ClampsNeeded);
        var rack = facts.Shop.Clamps.Where(c => c.Reach >= wood.Board.Thickness).Sum(c => (long)c.Count);
        findings.Require(wood.ClampsNeeded <= rack, where + " clamps", wood.ClampsNeeded, $"at most the {rack} on the rack that reach {wood.Board.Thickness}");
    }
}
