using System.Collections;
using System.Collections.Immutable;
using System.Reflection;
using CsCheck;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Planning.Tests;

/// <summary>What must hold of any plan, whatever the pile.</summary>
public sealed class WholePlanPropertyTests
{
    private static readonly string[] Woods = ["black-walnut", "sugar-maple", "black-cherry", "white-oak"];

    /// <summary>Wood, length, width, thickness; in sixteenths of an inch. Too narrow to be ripped, so that no size is rounded to the rule.</summary>
    private static readonly Gen<(int Wood, int Length, int Width, int Thickness)[]> Piles =
        Gen.Select(Gen.Int[0, 3], Gen.Int[8 * 16, 22 * 16], Gen.Int[20, 31], Gen.Int[12, 22]).Array[3, 7];

    [Fact]
    public void More_wood_never_makes_fewer_gifts() => Piles.Select(Piles).Sample(
        (pile, more) =>
        {
            var few = GiftsMade(Request(pile));
            var many = GiftsMade(Request([.. pile, .. more.Take(2)]));

            Assert.True(many.Value >= few.Value, $"{few.Value} with {pile.Length} offcuts, {many.Value} with two more");
            Assert.True(few.IsProven && many.IsProven);
        },
        iter: 10, threads: 1);

    [Fact]
    public void Scaling_all_lengths_scales_the_plan() => Piles.Select(Gen.Int[2, 3]).Sample(
        (pile, factor) =>
        {
            // What is held in hand for the ends is rounded up to a mark of the rule, which does not scale: without spread there, nothing is.
            var request = Request(pile);
            var allowances = request.Shop.Allowances;
            request = request with { Shop = request.Shop with { Allowances = allowances with { EndTrim = allowances.EndTrim with { Spread = Length.Zero } } } };
            var scaled = ((PlanRequest)Scaled(request, factor)) with
            {
                Gifts = [.. request.Gifts.Select(g => g with { Options = g.Options.SetItem("size", $"{4 * factor} in").SetItem("thickness", $"{3 * factor}/8 in") })],
            };

            var small = Outcome(request);
            var large = Outcome(scaled);

            Assert.Equal(small?.Made.Select(m => m.Gift), large?.Made.Select(m => m.Gift));
            if (small is null || large is null)
            {
                return;
            }

            Assert.Equal(Requests.Level(small, LevelKind.Looks).Value, Requests.Level(large, LevelKind.Looks).Value);
            Assert.Equal(small.GlueUps.Length, large.GlueUps.Length);
            // Wood counts in whole cubic millimetres, each strip's rounded up.
            var (wood, strips) = (Requests.Level(small, LevelKind.WoodUsed).Value, small.GlueUps.Sum(g => g.Strips.Length));
            var cube = factor * factor * factor;
            Assert.InRange(Requests.Level(large, LevelKind.WoodUsed).Value, (wood - strips) * cube, wood * cube);
        },
        iter: 8, threads: 1);

    private static Level GiftsMade(PlanRequest request) => Outcome(request) is { } plan
        ? Requests.Level(plan, LevelKind.GiftsMade)
        : new Level { Kind = LevelKind.GiftsMade, Value = 0, Bound = 0 };

    private static Plan? Outcome(PlanRequest request) =>
        (Planner.PlanAsync(request, Requests.Quick with { Seconds = 10 }).GetAwaiter().GetResult() as PlanOutcome.Planned)?.Plan;

    private static PlanRequest Request((int Wood, int Length, int Width, int Thickness)[] pile) => new()
    {
        Pile = [.. pile.Select((s, i) => Requests.Offcut($"X{i}", Woods[s.Wood], s.Length, s.Width, s.Thickness))],
        Gifts =
        [
            Requests.Squares("one", ("count", "2")) with { Circle = "club" },
            Requests.Squares("two", ("count", "3")) with { Circle = "club", Priority = 1 },
        ],
    };

    /// <summary>A copy with every length in it multiplied.</summary>
    private static object Scaled(object value, int factor)
    {
        switch (value)
        {
            case Length length:
                return length * factor;
            case string or Enum or DateOnly:
                return value;
        }

        var type = value.GetType();
        if (type.IsPrimitive)
        {
            return value;
        }

        if (type.IsGenericType && type.GetGenericTypeDefinition() == typeof(ImmutableArray<>))
        {
            var items = ((IEnumerable)value).Cast<object>().Select(item => Scaled(item, factor)).ToArray();
            var array = Array.CreateInstance(type.GetGenericArguments()[0], items.Length);
            items.CopyTo(array, 0);
            return typeof(ImmutableArray).GetMethods().Single(m => m is { Name: "Create" } && m.GetParameters() is [{ ParameterType.IsArray: true }])
                .MakeGenericMethod(type.GetGenericArguments()).Invoke(null, [array])!;
        }

        if (type.Namespace?.StartsWith("Scrapwright", StringComparison.Ordinal) != true)
        {
            return value;
        }

        var copy = type.GetMethod("<Clone>$")!.Invoke(value, null)!;
        foreach (var property in type.GetProperties(BindingFlags.Instance | BindingFlags.Public).Where(p => p.CanWrite && p.GetIndexParameters().Length == 0))
        {
            if (property.GetValue(value) is { } member)
            {
                property.SetValue(copy, Scaled(member, factor));
            }
        }

        return copy;
    }
}
