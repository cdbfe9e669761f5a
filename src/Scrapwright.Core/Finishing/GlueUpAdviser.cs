using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Finishing;

/// <summary>Works out the advice for one glue-up.</summary>
internal sealed class GlueUpAdviser
{
    // How long hands take, with glue brushed on one edge of each line: estimate.
    private const double SecondsEachLine = 5;
    private const double SecondsEachMetre = 30;
    private const double SecondsEachStrip = 5;
    private const double SecondsEachClamp = 8;
    private readonly Plan plan;
    private readonly GlueUp glueUp;
    private readonly string[] species;
    private readonly Glue? glue;
    private readonly double temperatureCelsius;
    private readonly ClampTime? time;

    internal GlueUpAdviser(PlanIndex index, GlueUp glueUp, int? month)
    {
        (plan, this.glueUp) = (index.Plan, glueUp);
        species = [.. glueUp.Strips.Select(s => index.SpeciesOf(s.Offcut)).Where(s => s.Length > 0).Distinct(StringComparer.Ordinal)];
        glue = GlueTable.Find(Shop.Glue);
        temperatureCelsius = ShopAir.Celsius(Shop, month) ?? ClampTime.TableCelsius;
        time = glue is null ? null : ClampTime.At(glue, temperatureCelsius);
    }

    private Shop Shop => plan.Request.Shop;

    private int Lines => Math.Max(0, glueUp.Strips.Length - 1);

    internal GlueUpAdvice Advise()
    {
        var line = Area.Of(glueUp.Overlap, glueUp.ThicknessLadder.Start);
        // Definition: 10⁶ mm² a square metre.
        var metres2 = line.SquareMillimetres / 1e6;
        var pressure = Lines == 0 ? null : Pressure();
        Band? newtons = pressure is { } p ? Band.Around(p.Least * 1000 * metres2, p.Most * 1000 * metres2) : null;
        var gap = Gap();
        var seconds = Seconds(glueUp.Strips.Length);
        var advice = new GlueUpAdvice
        {
            GlueKey = Shop.Glue,
            Glue = glue,
            Lines = Lines,
            LineArea = line,
            Grams = glue is null || Lines == 0 ? null : Spread(glue, metres2 * Lines),
            Kilopascals = pressure,
            Newtons = newtons,
            ClampsByForce = newtons is { } force ? new ClampRack(Shop, glueUp.RoughWidth).For(force) : null,
            ClampsPlanned = glueUp.ClampsNeeded,
            ClampGap = gap,
            Caul = Lines == 0 ? Length.Zero : Caul(gap),
            SpreadSeconds = seconds,
            Goes = Goes(),
            TemperatureCelsius = temperatureCelsius,
            Time = time,
            Cautions = [],
            Facts = [],
        };
        return advice with { Cautions = [.. GlueUpWords.Cautions(advice, Shop, species)], Facts = [.. GlueUpWords.Facts(advice, Shop)] };
    }

    /// <summary>Glue for an area, waste included. [g], at least 1</summary>
    internal static Band Spread(Glue glue, double metres2)
    {
        var grams = Band.Around(
            glue.SpreadGramsPerM2.Least * metres2 * GlueUpAdvice.WasteFactor, glue.SpreadGramsPerM2.Most * metres2 * GlueUpAdvice.WasteFactor);
        return new(Math.Max(1, grams.Least), Math.Max(1, grams.Most));
    }

    private Band? Pressure()
    {
        Band? all = null;
        if (glue is null) return null;
        foreach (var known in species.Select(key => SpeciesTable.Find(key)).OfType<Species>())
        {
            var one = glue.Kilopascals(DensityClasses.Of(known));
            all = all is { } band ? band.Or(one) : one;
        }

        return all;
    }

    // One clamp at each end, the others evenly between; no gap is wider than the shop's spacing.
    private Length Gap() => Length.Min(Shop.ClampSpacing, glueUp.Overlap.Divide(Math.Max(1, glueUp.ClampsNeeded - 1), Rounding.Up));

    private Length Caul(Length gap)
    {
        var outer = Length.Min(glueUp.Strips[0].Width, glueUp.Strips[^1].Width);
        // Our own choice: marks a rule shows at a glance.
        var mark = Shop.Unit == LengthUnit.Inch ? Length.FromInches(1, 4) : Length.FromMillimetres(5);
        return PressureCone.Caul(gap, outer).RoundTo(mark, Rounding.Up);
    }

    private int Seconds(int strips)
    {
        var lines = Math.Max(0, strips - 1);
        var seconds = (lines * (SecondsEachLine + (SecondsEachMetre * glueUp.Overlap.Millimetres / 1000)))
            + (strips * SecondsEachStrip) + (glueUp.ClampsNeeded * SecondsEachClamp);
        // Our own choice: beyond eleven days nothing is counted.
        return lines == 0 ? 0 : (int)Math.Ceiling(Math.Min(seconds, 1e6));
    }

    private int Goes()
    {
        if (time is not ClampTime.Sets sets || Lines < 2) return 1;
        var strips = glueUp.Strips.Length;
        var goes = 1;
        // Each go joins a share of the strips; the last joins those panels, which is quicker. 60 seconds a minute by definition.
        while (goes < Lines && Seconds((strips + goes - 1) / goes) > sets.OpenMinutes.Least * 60) goes++;
        return goes;
    }
}
