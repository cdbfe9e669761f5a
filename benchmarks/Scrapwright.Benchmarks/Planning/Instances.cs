using System.Collections.Immutable;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Files;

namespace Scrapwright.Benchmarks.Planning;

/// <summary>Piles and gift lists to plan; the large one is invented from a seed.</summary>
internal static class Instances
{
    private static readonly string[] Woods =
        ["black-walnut", "sugar-maple", "black-cherry", "white-oak", "white-ash", "american-beech", "sapele", "yellow-birch", "african-padauk"];

    internal static PlanRequest Example => ExampleWorkshop.Request;

    /// <summary>A pile of single offcuts and a list of gifts of all three families.</summary>
    internal static PlanRequest Large(int offcuts, int gifts, int seed = 20260621)
    {
        var random = new Random(seed);
        Length Eighths(int least, int most) => Length.FromInches(random.Next(least, most + 1), 8);
        return new PlanRequest
        {
            Workshop = $"{offcuts} offcuts, {gifts} gifts",
            Pile =
            [
                .. Enumerable.Range(1, offcuts).Select(i => new Offcut
                {
                    Label = $"X{i}",
                    Species = Woods[random.Next(Woods.Length)],
                    Length = Eighths(8 * 8, 30 * 8),
                    Width = Eighths(7, 36),
                    Thickness = Eighths(6, 10),
                    Cup = random.Next(6) == 0 ? Length.FromInches(1, 32) : Length.Zero,
                    Bow = random.Next(6) == 0 ? Length.FromInches(1, 16) : Length.Zero,
                    Defects = random.Next(8) == 0 ? [new Defect(DefectKind.Knot, Length.FromInches(4), Length.FromInches(5))] : [],
                }),
            ],
            Gifts =
            [
                .. Enumerable.Range(1, gifts).Select(i => new Gift
                {
                    Label = $"gift{i}",
                    Design = (i % 4) switch { 0 => "rod-stand", 1 => "u-stand", _ => "striped-squares" },
                    Circle = i % 3 == 0 ? $"circle{i % 2}" : "",
                    Priority = 1 + (i % 3),
                    Options = i % 5 == 0 && i % 4 > 1
                        ? ImmutableSortedDictionary<string, string>.Empty.Add("pattern", "mirrored")
                        : ImmutableSortedDictionary<string, string>.Empty,
                }),
            ],
        };
    }
}
