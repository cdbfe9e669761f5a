using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Scrapwright.Client.Api;
using Scrapwright.Client.Gifts;
using Scrapwright.Client.Shell;
using Scrapwright.Client.Years;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;

namespace Scrapwright.Client.Tests.Years;

public sealed class YearsScreensTests : ScreenContext
{
    private static readonly Occasion OpenDay = new() { Name = "Open day", Date = new(2027, 6, 19), Repeats = new Repetition.OnWeekday(6, 3, DayOfWeek.Saturday) };

    private static GivenGift Given(string recipient, string design, int year) => new() { Recipient = recipient, Design = design, Date = new(year, 6, 20), Occasion = "Open day" };

    private void Fill()
    {
        Far.Occasions.Add(new(1, OpenDay with { Name = "Apple day", Date = new(2027, 10, 9) }));
        Far.Occasions.Add(new(2, OpenDay));
        Far.Gifts.Add(new(3, new Gift { Label = "squares", Recipient = "Ada", Design = "striped-squares", Occasion = "open day" }));
        Far.Gifts.Add(new(4, new Gift { Label = "stand", Recipient = "Ben", Design = "rod-stand", Occasion = "Open day" }));
        Far.Gifts.Add(new(5, new Gift { Label = "cider", Recipient = "Cleo", Design = "rod-stand", Occasion = "Apple day" }));
        Far.Gifts.Add(new(6, new Gift { Label = "other", Recipient = "Dora", Design = "rod-stand", Due = new(2027, 3, 1) }));
        Far.Given.Add(new(7, Given("ada", "striped-squares", 2026)));
        Far.Given.Add(new(8, Given("Ben", "u-stand", 2026)));
    }

    [Fact]
    public void Gifts_stand_by_occasion_in_the_order_of_dates()
    {
        Fill();

        var page = Render<GiftsPage>();
        page.WaitForElement(".occasion-head");

        Assert.Equal(["Open day", "Apple day", "Without an occasion"], page.FindAll("h2").Select(h => h.TextContent));
        Assert.Equal(["Ada", "Ben", "Cleo", "Dora"], page.FindAll(".gift-card h3").Select(h => h.TextContent));
        Assert.Contains("Sat 19 Jun 2027 yesterday", page.Find(".occasion-head p").TextContent);
    }

    [Fact]
    public void Without_any_occasion_the_list_is_one_without_headings()
    {
        Far.Gifts.Add(new(6, new Gift { Label = "other", Recipient = "Dora", Design = "rod-stand" }));

        var page = Render<GiftsPage>();
        page.WaitForElement(".gift-card");

        Assert.Equal(["Dora"], page.FindAll("h2").Select(h => h.TextContent));
    }

    [Fact]
    public void A_design_that_somebody_had_is_doubted_and_another_one_opens_in_the_form()
    {
        Fill();

        var page = Render<GiftsPage>();
        page.WaitForElement(".gift-doubt");

        Assert.Equal("ada has had the same design (striped squares) on 20 June 2026, Open day. Something else:", Assert.Single(page.FindAll(".gift-doubt .doubt")).TextContent);
        Assert.Equal(["Stand with rods instead for ada", "Stand with U-shaped sides instead for ada"], page.FindAll(".gift-doubt button").Select(b => b.TextContent));
        page.FindAll(".gift-doubt button")[1].Click();
        Assert.Equal("u-stand", page.Find("#gift-design").GetAttribute("value"));
        Assert.Equal("Ada", page.Find("#gift-recipient").GetAttribute("value"));
    }

    [Fact]
    public void Gifts_are_given_but_for_those_unticked_and_it_can_be_taken_back()
    {
        Fill();
        var page = Render<GiftsPage>();
        page.WaitForElement(".occasion-head");

        page.FindAll(".occasion-head button").First(b => b.TextContent.StartsWith("They are given", StringComparison.Ordinal)).Click();
        Assert.Equal("2027-06-19", page.Find("#give-2-on").GetAttribute("value"));
        Assert.Contains("Open day is next on Sat 17 Jun 2028", page.Find(".year-panel .hint").TextContent);
        page.Find("#give-2-4").Change(false);
        page.Find(".year-panel").Submit();

        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".year-panel")));
        Assert.Equal(["stand"], Assert.Single(Far.Gave).Stay);
        Assert.Equal(new DateOnly(2027, 6, 19), Far.Gave[0].On);
        var undoing = Services.GetRequiredService<Undoing>();
        Assert.Equal(("Open day", "done, 1 gift given"), (undoing.Latest!.Thing, undoing.Latest.Deed));
        page.InvokeAsync(undoing.UndoLatestAsync);
        page.WaitForAssertion(() => Assert.Equal(new DateOnly(2027, 6, 19), Assert.Single(Far.TakenBack).Before));
    }

    [Fact]
    public void When_nothing_is_ticked_nothing_can_be_given()
    {
        Fill();
        var page = Render<GiftsPage>();
        page.WaitForElement(".occasion-head");
        page.FindAll(".occasion-head button").First(b => b.TextContent.StartsWith("They are given", StringComparison.Ordinal)).Click();

        page.Find("#give-2-3").Change(false);
        page.Find("#give-2-4").Change(false);

        Assert.True(page.Find(".year-panel button[type=submit]").HasAttribute("disabled"));
    }

    [Fact]
    public void The_same_people_again_get_what_they_have_not_had()
    {
        Fill();
        Far.Gifts.Clear();
        Far.Offcuts.Add(new(9, Board("black-walnut"), LengthUnit.Inch));
        Far.Offcuts.Add(new(10, Board("sugar-maple"), LengthUnit.Inch));
        var page = Render<GiftsPage>();
        page.WaitForElement(".occasion-head");

        page.FindAll(".occasion-head button").First(b => b.TextContent.StartsWith("The same people again", StringComparison.Ordinal)).Click();
        Assert.Equal(["ada", "Ben"], page.FindAll(".again strong").Select(s => s.TextContent));
        Assert.Equal("Stand with rods, new to them", page.Find("#again-2-0 option").TextContent);
        page.FindAll(".again button")[0].Click();

        page.WaitForAssertion(() => Assert.Equal(("ada", "Open day"), (Far.Gifts.Single().Gift.Recipient, Far.Gifts.Single().Gift.Occasion)));
        Assert.NotEqual("striped-squares", Far.Gifts.Single().Gift.Design);
        page.WaitForAssertion(() => Assert.Single(page.FindAll(".again button")));
    }

    [Fact]
    public void An_occasion_is_offered_what_its_date_suggests()
    {
        Far.Today = new(2027, 5, 1);
        var page = Render<OccasionsPage>();
        page.WaitForElement("#add-occasion").Click();

        page.Find("#occasion-name").Input("Whit Monday fair");
        page.Find("#occasion-date").Change("2027-05-17");
        Assert.Equal(["", "every year on 17 May", "third Monday of May", "Easter plus 50 days"], page.FindAll("#occasion-repeats option").Select(o => o.GetAttribute("value")));
        page.Find("#occasion-repeats").Change("Easter plus 50 days");
        Assert.Equal("Then on Mon 5 Jun 2028, Mon 21 May 2029, Mon 10 Jun 2030.", page.Find("#occasion-repeats-hint").TextContent);
        page.Find("form").Submit();

        page.WaitForAssertion(() => Assert.Equal(new Repetition.FromEaster(50), Far.Occasions.Single().Occasion.Repeats));
        Assert.Equal(("Whit Monday fair", new DateOnly(2027, 5, 17)), (Far.Occasions[0].Occasion.Name, Far.Occasions[0].Occasion.Date));
    }

    [Fact]
    public void A_name_that_is_taken_or_missing_is_told_and_not_sent()
    {
        Fill();
        var page = Render<OccasionsPage>();
        page.WaitForElement("#add-occasion").Click();

        page.Find("form").Submit();
        Assert.Contains("expected a name", page.Find("#occasion-name-hint").TextContent);
        page.Find("#occasion-name").Input("apple DAY");
        page.Find("form").Submit();

        Assert.Contains("Found “apple DAY”", page.Find("#occasion-name-hint").TextContent);
        Assert.DoesNotContain(Far.Requests, r => r.StartsWith("POST", StringComparison.Ordinal));
    }

    [Fact]
    public void Who_got_what_is_shown_by_year_or_person_and_searched()
    {
        Fill();
        Far.Given.Add(new(9, Given("ADA", "u-stand", 2025)));
        var page = Render<GivenPage>();
        page.WaitForElement(".given-group");

        Assert.Equal(["2026", "2025"], page.FindAll("h2").Select(h => h.TextContent));
        page.Find("#given-by").Change("person");
        Assert.Equal(["ada", "Ben"], page.FindAll("h2").Select(h => h.TextContent));
        page.Find("#given-search").Input("u-shaped 2025");
        Assert.Single(page.FindAll(".given-row"));
        page.Find("#given-search").Input("violin");
        Assert.Contains("Nothing with “violin”", page.Find(".empty").TextContent);
    }

    [Fact]
    public void What_was_given_is_added_corrected_and_removed_by_hand()
    {
        var page = Render<GivenPage>();
        page.WaitForElement("#add-given").Click();
        page.Find("#given-options").Input("walnut");
        page.Find("form").Submit();
        Assert.Contains("Found “walnut”", page.Find("#given-options-hint").TextContent);
        page.Find("#given-options").Input("species=walnut+ash");
        page.Find("form").Submit();
        Assert.Contains("expected a name", page.Find("#given-recipient-hint").TextContent);
        page.Find("#given-recipient").Input(" Ada ");
        page.Find("form").Submit();

        page.WaitForElement(".given-row");
        Assert.Equal(("Ada", "walnut+ash"), (Far.Given.Single().Given.Recipient, Far.Given.Single().Given.Options["species"]));
        page.FindAll(".given-row button")[0].Click();
        page.Find("#given-note").Change("liked it");
        page.Find("form").Submit();
        page.WaitForAssertion(() => Assert.Equal("liked it", Far.Given.Single().Given.Note));
        page.WaitForElement(".given-row");
        page.FindAll(".given-row button")[1].Click();

        page.WaitForAssertion(() => Assert.Empty(Far.Given));
        page.InvokeAsync(Services.GetRequiredService<Undoing>().UndoLatestAsync);
        page.WaitForAssertion(() => Assert.Equal("Ada", Far.Given.Single().Given.Recipient));
    }

    [Theory]
    [InlineData(0, "today")]
    [InlineData(1, "tomorrow")]
    [InlineData(-1, "yesterday")]
    [InlineData(20, "in 20 days")]
    [InlineData(21, "in 3 weeks")]
    [InlineData(-15, "15 days ago")]
    public void How_far_a_day_is_is_said_in_days_then_weeks(int days, string words) => Assert.Equal(words, YearWords.HowFar(OpenDay.Date.AddDays(days), OpenDay.Date));

    private static Offcut Board(string species) => new() { Label = $"X{species.Length}", Species = species, Length = Length.FromInches(20), Width = Length.FromInches(2), Thickness = Length.FromInches(1) };
}
