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
    /// <summary>What is held in hand; when nothing is said, nothing. <see cref="GiftMargins"/> gives what a gift's chance asks for.</summary>
    public SizeMargins Margins { get; init; } = SizeMargins.None;

    /// <summary>The members' parts in order along the board.</summary>
    public ImmutableArray<Part> Members => [.. Run.Members.Select(m => Parts.First(p => p.Key == m.Part))];

    /// <summary>Least length: the parts, kerfs between them, both ends squared, and what is held in hand for those, rounded up to a mark of the rule.</summary>
    public Length Length
    {
        get
        {
            var members = Members;
            return Measures.Length.Sum(members.Select(p => p.Length))
                + (Shop.TableSaw.Kerf * (members.Length - 1)) + (Shop.Allowances.EndTrim.Mean * 2)
                + Margins.ForEnds(Shop);
        }
    }

    /// <summary>Width of the parts.</summary>
    public Length PartWidth => Members[0].Width;

    /// <summary>Thickness when it comes from the planer: finished and both faces' sanding.</summary>
    public Length PlanedThickness => Members[0].Thickness + (Shop.Allowances.Sand.Mean * 2);

    /// <summary>Width to cut from the offcut: both edges jointed and the margin in hand, rounded up to a mark of the rule.</summary>
    public Length RoughWidth
    {
        get
        {
            var ladder = StripMilling.Width(PartWidth, Shop);
            return ReadableSize.Up(PartWidth + (PartWidth - ladder.End) + Chance.Margin(ladder.Spread, Margins.Width), Shop.Unit);
        }
    }

    /// <summary>Expected thickness that the milled strip must have, with the margin in hand.</summary>
    /// <param name="stripSpread">One standard deviation of the strip's thickness.</param>
    public Length StripThickness(Length stripSpread) => PlanedThickness + Chance.Margin(stripSpread, Margins.Thickness);

    /// <summary>Net width that the strip must have when that many of its edges were jointed since a saw set its width.</summary>
    public Length NetWidth(int edges) => PartWidth + Chance.Margin(Shop.Allowances.EdgeJoint.Spread, Math.Sqrt(edges) * Margins.Width);
}
