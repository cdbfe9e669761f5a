using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Milling;

/// <summary>What a strip must measure to give one grain run of solid parts.</summary>
/// <param name="Run">The run.</param>
/// <param name="Parts">The product's parts, to look the members up.</param>
/// <param name="Shop">The shop.</param>
public sealed record SolidNeeds(GrainRun Run, ImmutableArray<Part> Parts, Shop Shop)
{
    /// <summary>The members' parts in order along the board.</summary>
    public ImmutableArray<Part> Members => [.. Run.Members.Select(m => Parts.First(p => p.Key == m.Part))];

    /// <summary>Least length: the parts, kerfs between them, both ends squared.</summary>
    public Length Length
    {
        get
        {
            var members = Members;
            return Measures.Length.Sum(members.Select(p => p.Length))
                + (Shop.TableSaw.Kerf * (members.Length - 1)) + (Shop.Allowances.EndTrim.Mean * 2);
        }
    }

    /// <summary>Width of the parts.</summary>
    public Length PartWidth => Members[0].Width;

    /// <summary>Thickness when it comes from the planer: finished and both faces' sanding.</summary>
    public Length PlanedThickness => Members[0].Thickness + (Shop.Allowances.Sand.Mean * 2);

    /// <summary>Width to cut from the offcut: both edges jointed and the asked chance in hand, rounded up to a mark of the rule.</summary>
    public Length RoughWidth
    {
        get
        {
            var ladder = StripMilling.Width(PartWidth, Shop);
            return ReadableSize.Up(PartWidth + (PartWidth - ladder.End) + Chance.Margin(ladder.Spread, Shop.ConfidencePercent), Shop.Unit);
        }
    }

    /// <summary>Expected thickness that the milled strip must have, with the asked chance in hand.</summary>
    /// <param name="stripSpread">One standard deviation of the strip's thickness.</param>
    public Length StripThickness(Length stripSpread) => PlanedThickness + Chance.Margin(stripSpread, Shop.ConfidencePercent);
}
