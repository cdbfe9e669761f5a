using CsCheck;
using Scrapwright.Core.Plans;

namespace Scrapwright.Planning.Tests;

/// <summary>Small piles of two or three woods with one or two sets of squares to make.</summary>
internal static class SmallPiles
{
    private static readonly string[] Woods = ["black-walnut", "sugar-maple", "black-cherry"];

    internal static readonly Gen<PlanRequest> Gen =
        from sizes in CsCheck.Gen.Select(CsCheck.Gen.Int[150, 330], CsCheck.Gen.Int[16, 40], CsCheck.Gen.Int[12, 16], CsCheck.Gen.Int[0, 2]).Array[6, 9]
        from gifts in CsCheck.Gen.Int[1, 2]
        select new PlanRequest
        {
            Workshop = "any shed",
            Pile = [.. sizes.Select((s, i) => Requests.Offcut($"P{i + 1}", Woods[s.Item4], s.Item1, s.Item2, s.Item3))],
            Gifts = [.. Enumerable.Range(1, gifts).Select(i => Requests.Squares($"gift{i}"))],
        };
}
