using System.Globalization;
using CsCheck;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Fits;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Sheets;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Tests.Fits;
using Scrapwright.Core.Wood;
using static Scrapwright.Core.Tests.Designs.Derivation;

namespace Scrapwright.Core.Tests.Sheets;

public sealed class FitSheetTests
{
    private static readonly Shop Millimetres = new() { Unit = LengthUnit.Millimetre };

    [Theory]
    [InlineData("good", LengthUnit.Inch)]
    [InlineData("jams", LengthUnit.Millimetre)]
    public void A_plot_is_as_last_seen(string name, LengthUnit unit)
    {
        var drawing = FitPlot.Draw(SeasonFit.Between(Trial(name == "good" ? 2.5 : 0.4, 4)), "Stand, between the front rods", new Shop { Unit = unit });

        Snapshot.Match("Sheets", $"fit-{name}", "svg", SvgWriter.Write(drawing));
    }

    [Fact]
    public void A_plot_stays_inside_and_its_texts_apart_whatever_the_fit() =>
        Gen.Select(Gen.Double[0, 20], Gen.Double[0, 20], Gen.Double[0.05, 3], Gen.Bool, Gen.Int[80, 190]).Sample((clearance, most, least, inch, width) =>
        {
            var trial = Trial(clearance, most) with { Least = Length.FromMillimetresRounded(least) };

            var drawing = FitPlot.Draw(SeasonFit.Between(trial), "Stand with a rather long label, between the uprights", inch ? new Shop() : Millimetres, width, 35);

            SheetRules.AssertInside(drawing);
            SheetRules.AssertNoTextOverlaps(drawing.Title, drawing.AllMarks);
            return true;
        }, iter: 100);

    // One dot a month, on the clearance by the scale's own marks.
    [Fact]
    public void Dots_stand_where_the_scale_says()
    {
        var season = SeasonFit.Between(Trial(2.5, 4));

        var drawing = FitPlot.Draw(season, "Stand", Millimetres);

        var dots = drawing.AllMarks.OfType<Mark.Circle>().Select(c => c.Middle).ToArray();
        var ticks = drawing.AllMarks.OfType<Mark.Line>().Where(l => l.From.XMm < 14 && l.To.XMm > 14).Select(l => l.From.YMm).OrderDescending().ToArray();
        var labels = drawing.AllMarks.OfType<Mark.Text>().Where(t => t.Bounds.RightMm < 13 && t.Foot.YMm > 5).OrderByDescending(t => t.Foot.YMm).Select(t => double.Parse(t.Letters, CultureInfo.InvariantCulture)).ToArray();
        Assert.Equal(ticks.Length, labels.Length);
        Assert.Equal(12, dots.Length);
        Assert.All(season.Months, m => Assert.Equal(m.Clearance.Millimetres, labels[0] + ((ticks[0] - dots[m.Month - 1].YMm) / (ticks[0] - ticks[^1]) * (labels[^1] - labels[0])), 1e-6));
        Assert.All(dots.Zip(dots.Skip(1)), d => Assert.Equal(dots[1].XMm - dots[0].XMm, d.Second.XMm - d.First.XMm, 1e-9));
    }

    [Fact]
    public void A_plot_is_told_to_those_who_cannot_see_it()
    {
        var season = SeasonFit.Between(Trial(0.4, 4));

        var summary = FitPlot.Draw(season, "Stand, between the front rods", Millimetres).Summary;

        Assert.StartsWith("Stand, between the front rods. Jams in ", summary, StringComparison.Ordinal);
        Assert.All(season.Months, m => Assert.Contains($"{FitWords.Month(m.Month)} {FitWords.Fine(m.Clearance, Millimetres, Rounding.Down)}", summary, StringComparison.Ordinal));
    }

    [Fact]
    public void The_sheet_has_plots_openings_panels_and_weights()
    {
        var plan = PlanFitsReferenceTests.RodStand(("clearance", "1/64 in"));

        var sheet = Assert.Single(BenchSheets.For(plan, PaperSize.Letter), s => s.Title == "Fits through the year");

        var texts = sheet.AllMarks.OfType<Mark.Text>().Select(t => t.Letters).ToArray();
        Assert.Contains("Stand, between the front rods", texts);
        Assert.Contains(texts, t => t.StartsWith("Jams in every month", StringComparison.Ordinal));
        Assert.Contains(texts, t => t.Contains("never jams from", StringComparison.Ordinal));
        Assert.Contains(texts, t => t.Contains("Stand, between the plates.", StringComparison.Ordinal));
        Assert.Contains(texts, t => t.Contains("Small enough to glue all over: Stand, rod in through hole", StringComparison.Ordinal));
        Assert.Contains("G1", texts);
        Assert.Contains(texts, t => t.Contains("Tiles about", StringComparison.Ordinal));
        SheetRules.AssertInsideMargins(sheet);
        SheetRules.AssertNoTextOverlaps(sheet.Title, sheet.AllMarks);
    }

    [Fact]
    public void A_damp_pile_is_the_first_thing_on_the_overview()
    {
        var plan = PlanFitsReferenceTests.RodStand();
        plan = plan with { Request = plan.Request with { Shop = plan.Request.Shop with { PileMoisturePercent = 15 } } };

        var overview = BenchSheets.For(plan, PaperSize.A4)[0];

        var texts = overview.AllMarks.OfType<Mark.Text>().Where(t => t.Bounds.TopMm > 30).OrderBy(t => t.Bounds.TopMm).Select(t => t.Letters);
        Assert.StartsWith("Let the wood lie in the shop", texts.First(), StringComparison.Ordinal);
    }

    [Fact]
    public void Wood_that_moves_too_much_across_a_lap_is_warned_of()
    {
        var plan = PlanFitsReferenceTests.Plan(new Gift { Label = "U", Design = "u-stand", Options = Options(("depth", "3 in"), ("size", "8 in")), Climate = "damp" })
            .Offcut("M", "sugar-maple").Make("U", ("left-upright", "M"), ("base", "M"), ("right-upright", "M"), ("bar", "M")).Build();

        var texts = BenchSheets.For(plan, PaperSize.A4).First(s => s.Title == "Fits through the year").AllMarks.OfType<Mark.Text>().Select(t => t.Letters);

        Assert.Contains(texts, t => t.StartsWith("U, half-lap: its sides move 0.043", StringComparison.Ordinal));
    }

    private static FitTrial Trial(double clearanceMm, double mostMm) => new()
    {
        Holder = [Airs.Still(100 + clearanceMm)],
        Held = [Airs.Across("sugar-maple", RingOrientation.Unknown, 100)],
        HeldTurns = true,
        FittedIn = Airs.Steady(8),
        LivesIn = Airs.Year(6.5, 6.8, 7.5, 8.2, 9, 10, 11, 11, 10, 9, 7.8, 7),
        Least = Length.FromMicrometres(400),
        Most = mostMm < 0.5 ? null : Length.FromMillimetresRounded(mostMm),
    };
}
