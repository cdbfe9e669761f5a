using Bunit;
using Scrapwright.Client.Api;
using Scrapwright.Client.Shops;
using Scrapwright.Core.Shops;

namespace Scrapwright.Client.Tests.Shops;

public sealed class HoursGroupTests : ScreenContext
{
    [Fact]
    public void Hours_are_added_changed_and_removed_and_saved_each_time()
    {
        var group = Render<HoursGroup>();
        group.WaitForElement("#hours-monday-add").Click();
        group.WaitForAssertion(() => Assert.Equal(new HourRange(new(18, 30), new(21, 30)), Monday()));

        group.Find("#hours-monday-until-0").Change("22:15");
        group.WaitForAssertion(() => Assert.Equal(new TimeOnly(22, 15), Monday().Until));

        group.Find("#hours-monday-from-0").Closest(".hour-range")!.QuerySelector("button")!.Click();
        group.WaitForAssertion(() => Assert.DoesNotContain(Far.Hours.Week, d => d.Day == DayOfWeek.Monday));

        HourRange Monday() => Far.Hours.Week.Single(d => d.Day == DayOfWeek.Monday).Hours.Single();
    }

    [Fact]
    public void Days_away_have_a_note_and_other_days_hours()
    {
        var group = Render<HoursGroup>();
        group.WaitForElement("#add-away").Click();
        group.WaitForElement("#other-first-0").Change("2027-05-22");
        group.WaitForAssertion(() => Assert.Equal(new DateOnly(2027, 5, 22), Far.Hours.Exceptions.Single().First));
        group.Find("#other-note-0").Change("by the sea");
        group.WaitForAssertion(() => Assert.Equal("by the sea", Far.Hours.Exceptions.Single().Note));

        group.Find("#add-other").Click();

        group.WaitForAssertion(() => Assert.Equal(2, Far.Hours.Exceptions.Length));
        Assert.True(Far.Hours.Exceptions[0].Hours.IsEmpty);
        Assert.Single(Far.Hours.Exceptions[1].Hours);
    }

    [Fact]
    public void Quiet_hours_makers_and_zone_are_saved()
    {
        var group = Render<HoursGroup>();
        group.WaitForElement("#quiet-from").Change("");
        group.Find("#quiet-until").Change("09:00");
        group.Find("#makers").Change("2");
        Assert.Equal("Europe/Dublin", group.Find("#time-zone").GetAttribute("placeholder"));
        group.Find("#time-zone").Change(" America/New_York ");

        group.WaitForAssertion(() => Assert.Equal("America/New_York", Far.Hours.TimeZone));
        Assert.Equal((null, new TimeOnly(9, 0), 2), (Far.Hours.QuietFrom, Far.Hours.QuietUntil!.Value, Far.Hours.Makers));
    }

    [Fact]
    public void What_is_wrong_stays_as_typed_with_the_reason_beside_it()
    {
        Far.Hours = new WorkHours { Week = [new(DayOfWeek.Friday, [new(new(18, 0), new(20, 0))])] };
        Far.HoursProblem = new ApiProblem { Title = "One value is wrong; nothing was changed.", Status = 400, Problems = [new("week[0].hours[0].until", "17:00", "later than 18:00")] };
        var group = Render<HoursGroup>();

        group.WaitForElement("#hours-friday-until-0").Change("17:00");

        group.WaitForAssertion(() => Assert.Equal("Found “17:00”, expected later than 18:00.", group.Find("#hours-friday-until-0-hint").TextContent.Trim()));
        Assert.Equal(("17:00", "true"), (group.Find("#hours-friday-until-0").GetAttribute("value"), group.Find("#hours-friday-until-0").GetAttribute("aria-invalid")));
        Assert.Equal(new TimeOnly(20, 0), Far.Hours.Week[0].Hours[0].Until);
    }
}
