using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Sheets;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Tests.Plans;

/// <summary>Two squares from two thick sticks, opened like a book; put together by hand.</summary>
public sealed class SistersTests
{
    private static readonly Plan Book = Make(["M1/1", "W1/1", "W1/2", "M1/2"], [("M1/1", "M1/2"), ("W1/1", "W1/2")]);

    [Fact]
    public void Sisters_opposite_each_other_hold_and_earn_the_point()
    {
        Assert.Empty(PlanAudit.Check(Book));
        Assert.Equal(1, PlanScores.Of(Book).Looks);
    }

    [Fact]
    public void Sisters_that_do_not_lie_opposite_each_other_hold_without_the_point()
    {
        var outside = Make(["W1/1", "M1/1", "W1/2", "M1/2"], [("M1/1", "M1/2"), ("W1/1", "W1/2")]);

        Assert.Empty(PlanAudit.Check(outside));
        Assert.Equal(0, PlanScores.Of(outside).Looks);
    }

    [Fact]
    public void Strips_of_one_wood_that_are_no_sisters_may_not_lie_in_the_middle()
    {
        var stretches = MakeFromStretches("W1/1/1", "W1/2/2");

        Assert.Equal(
            ["glue-up G1 strip W1/1/1 sister", "glue-up G1 strip W1/2/2 sister", "glue-up G1 strips 2 and 3 contrast"],
            PlanAudit.Check(stretches).Select(f => f.Where).Order());
        Assert.Empty(PlanAudit.Check(MakeFromStretches("W1/1/2", "W1/2/2")));
    }

    [Fact]
    public void Layers_with_another_between_them_are_no_sisters()
    {
        var three = Make(["M1/1", "W1/1", "W1/3", "M1/2"], [("M1/1", "M1/2"), ("W1/1", "W1/3")], walnutLayers: 3);
        var two = Make(["M1/1", "W1/2", "W1/3", "M1/2"], [("M1/1", "M1/2"), ("W1/2", "W1/3")], walnutLayers: 3);

        Assert.Contains(PlanAudit.Check(three), f => f.Where == "glue-up G1 strip W1/1 sister");
        Assert.Empty(PlanAudit.Check(two));
    }

    [Fact]
    public void Sisters_of_two_sticks_are_none()
    {
        var crossed = Make(["M1/1", "W1/1", "W1/2", "M1/2"], [("M1/1", "W1/2"), ("W1/1", "M1/2")]);

        Assert.Equal(4, PlanAudit.Check(crossed).Count(f => f.Where.EndsWith(" sister", StringComparison.Ordinal)));
    }

    [Fact]
    public void One_of_two_sisters_is_turned_over()
    {
        Assert.NotEmpty(PlanAudit.Check(With(s => s with { TurnedOver = true })));
        Assert.NotEmpty(PlanAudit.Check(With(s => s with { TurnedOver = false })));
        Assert.Empty(PlanAudit.Check(With(s => s with { TurnedOver = !s.TurnedOver })));
    }

    [Fact]
    public void A_sister_named_by_one_alone_or_not_at_all_is_found()
    {
        Assert.NotEmpty(PlanAudit.Check(With(s => s.Piece == "W1/1" ? s with { Sister = "" } : s)));
        Assert.NotEmpty(PlanAudit.Check(With(s => s.Piece == "W1/1" ? s with { Sister = "W9" } : s)));
        // Without names the point is gone, though neighbours may lie so.
        Assert.Equal(["level Looks value"], PlanAudit.Check(With(s => s with { Sister = "", TurnedOver = false })).Select(f => f.Where));
    }

    [Fact]
    public void Another_order_takes_the_point_and_the_old_one_brings_it_back()
    {
        var other = PlanOrder.With(Book, "G1", [1, 0, 2, 3]);
        var back = PlanOrder.With(other, "G1", [1, 0, 2, 3]);

        Assert.Equal(0, other.Levels.Single(l => l.Kind == LevelKind.Looks).Value);
        Assert.Empty(PlanAudit.Check(other));
        Assert.Empty(PlanAudit.Check(back));
        Assert.Equal(Book.GlueUps[0], back.GlueUps[0] with { Strips = Book.GlueUps[0].Strips });
        Assert.Equal(Book.GlueUps[0].Strips, back.GlueUps[0].Strips);
    }

    [Fact]
    public void A_plan_that_names_no_sisters_is_read_as_before()
    {
        var text = JsonNode.Parse(PlanJson.Write(ExamplePlans.Squares))!;
        foreach (var strip in text["glueUps"]![0]!["strips"]!.AsArray())
        {
            Assert.True(strip!.AsObject().Remove("sister") && strip.AsObject().Remove("turnedOver"));
        }

        Assert.Empty(PlanAudit.Check(PlanJson.Read(text.ToJsonString())));
    }

    [Fact]
    public void Sheets_give_sisters_one_letter_and_say_what_is_turned_over()
    {
        Assert.Equal(["B", "A", "A", "B"], Sisters.LettersOf(Book.GlueUps[0].Strips));
        Assert.Equal("Open like a book, both sawn faces up, marked ends together: A W1/1 + W1/2, B M1/1 + M1/2. Turn over the second of each.", BookWords.Of(Book.GlueUps[0]));
        Assert.Contains("W1/1 and W1/2", BookWords.Of(Book, Book.Steps.First(s => s.Operation == Operation.ResawStrips)));
        Assert.Equal("", BookWords.Of(ExamplePlans.Squares.GlueUps[0]));
        Snapshot.Match("Sheets", "glue-up-book-matched", "svg", SvgWriter.Write(GlueUpDrawing.Draw(Book.GlueUps[0], Book, DrawingLook.Hatched)));
    }

    private static Plan With(Func<Strip, Strip> change) =>
        Book with { GlueUps = [Book.GlueUps[0] with { Strips = [.. Book.GlueUps[0].Strips.Select(change)] }] };

    private static Plan Make(string[] order, (string, string)[] sisters, int walnutLayers = 2)
    {
        var (request, designs, part) = Two(Length.FromInches(10));
        var layers = Enumerable.Range(1, walnutLayers).Select(i => $"W1/{i}").Concat(["M1/1", "M1/2"]).ToArray();
        return Finish(Milled(request, designs).ResawStrip("W1", walnutLayers).ResawStrip("M1", 2).CleanSawnFaces(layers), part, order, sisters);
    }

    /// <summary>The walnut long enough for two strips of each layer.</summary>
    private static Plan MakeFromStretches(string one, string other)
    {
        var (request, designs, part) = Two(Length.FromInches(20) + new Shop().TableSaw.Kerf);
        var bench = Milled(request, designs).ResawStrip("W1", 2).ResawStrip("M1", 2).CleanSawnFaces("W1/1", "W1/2", "M1/1", "M1/2")
            .Crosscut(Operation.CrosscutStrips, "W1/1", ("W1/1/1", Length.FromInches(10)), ("W1/1/2", Length.FromInches(10)))
            .Crosscut(Operation.CrosscutStrips, "W1/2", ("W1/2/1", Length.FromInches(10)), ("W1/2/2", Length.FromInches(10)));
        return Finish(bench, part, ["M1/1", one, other, "M1/2"], [("M1/1", "M1/2"), (one, other)]);
    }

    private static (PlanRequest Request, ImmutableArray<GiftDesign> Designs, Part Part) Two(Length walnut)
    {
        var request = new PlanRequest
        {
            Pile = [Stick("W1", "black-walnut", walnut), Stick("M1", "sugar-maple", Length.FromInches(10))],
            Gifts =
            [
                new Gift
                {
                    Label = "Ida",
                    Design = "striped-squares",
                    Options = ImmutableSortedDictionary<string, string>.Empty.Add("count", "2").Add("pattern", "book-matched"),
                },
            ],
        };
        var designs = GiftDesigns.Derive(request.Gifts, request.Designs, request.Shop);
        return (request, designs, ((DesignOutcome.Derived)designs[0].Outcome).Product.Parts[0]);
    }

    private static Offcut Stick(string label, string species, Length length) => new()
    {
        Label = label,
        Species = species,
        Length = length,
        Width = Length.FromInches(11, 8),
        Thickness = Length.FromInches(3),
    };

    private static PlanBench Milled(PlanRequest request, ImmutableArray<GiftDesign> designs) =>
        new PlanBench(request, designs).FaceJoint("W1", "M1").FacePlane("W1", "M1").EdgeJoint(("W1", 2), ("M1", 2));

    private static Plan Finish(PlanBench bench, Part part, string[] order, (string, string)[] sisters) => bench
        .PlaneAlike(order)
        .Glue("G1", "Ida", part, 2, 1, order)
        .Sisters("G1", sisters)
        .FlattenPanel("G1")
        .PlanePanel(part, "G1")
        .TrimWidth(("G1", part.Width))
        .Crosscut(Operation.CrosscutBlanks, "G1", ("Ida-1", part.Length), ("Ida-2", part.Length))
        .Assemble("Ida", null, new MadePart(part.Key, 1, "Ida-1"), new MadePart(part.Key, 2, "Ida-2"))
        .Build();
}
