using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;

namespace Scrapwright.Core.Finishing;

/// <summary>What gluing one board face to face takes, in a few short lines. Nothing of it changes the plan.</summary>
public static class FaceGlueAdvice
{
    /// <summary>Area of the one glue line: the whole face.</summary>
    public static Area GlueArea(FacedBoard board)
    {
        ArgumentNullException.ThrowIfNull(board);
        return Area.Of(board.Length, board.Width);
    }

    /// <summary>Glue, clamps and time. Cauls over the whole width are common practice, no source.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="board">One of its boards.</param>
    /// <param name="month">1 to 12 for the mean temperature of the shop's climate in that month; null, or a climate that is not known: 21 °C.</param>
    public static ImmutableArray<AdviceFact> Facts(Plan plan, FacedBoard board, int? month = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(board);
        var shop = plan.Request.Shop;
        var glue = GlueTable.Find(shop.Glue);
        var area = GlueArea(board);
        var facts = ImmutableArray.CreateBuilder<AdviceFact>();
        facts.Add(new("Glue", glue is null
            ? $"{shop.Glue}: the whole face, {Amounts.Area(area, shop.Unit)}; its label says how much"
            // Definition: 10⁶ mm² a square metre.
            : $"{glue.Name}: {Amounts.Grams(GlueUpAdviser.Spread(glue, area.SquareMillimetres / 1e6), shop.Unit)} over the whole face, {Amounts.Area(area, shop.Unit)}"));
        var celsius = ShopAir.Celsius(shop, month) ?? ClampTime.TableCelsius;
        var time = glue is null ? null : ClampTime.At(glue, celsius);
        var hold = time is ClampTime.Sets sets ? $"; {Amounts.Minutes(sets.ClampMinutes)} at {Amounts.Temperature(celsius, shop.Unit)}, mill it after {Amounts.Hours(sets.CureHours)}" : "";
        facts.Add(new("Clamps", $"{board.ClampsNeeded}, on cauls across the whole width, the middle ones first{hold}"));
        if (time is ClampTime.TooCold cold)
        {
            facts.Add(new("Too cold", $"at {Amounts.Temperature(celsius, shop.Unit)}: glue, wood and air need {Amounts.Temperature(cold.MinimumCelsius, shop.Unit)} or more"));
        }

        return facts.ToImmutable();
    }
}
