using System.Net;
using Scrapwright.Client.Api;
using Scrapwright.Core.Shops;

namespace Scrapwright.Web.Tests.Shops;

public sealed class HoursApiTests
{
    [Fact]
    public async Task The_usual_hours_are_kept_as_they_are_given_and_leave_the_plan_up_to_date()
    {
        await using var app = await RunningApp.StartAsync();
        var hours = await app.GetAsync<WorkHours>(ApiRoutes.Hours);
        Assert.Equal(new WorkHours().Week.Length, hours.Week.Length);

        var changed = hours with { TimeZone = "America/New_York", QuietUntil = null, Exceptions = [new(new(2027, 6, 1), new(2027, 6, 3), [], "away")] };
        Assert.Equal(HttpStatusCode.OK, (await app.PutAsync(ApiRoutes.Hours, changed)).StatusCode);

        var kept = await app.GetAsync<WorkHours>(ApiRoutes.Hours);
        Assert.Equal(("America/New_York", null, "away"), (kept.TimeZone, kept.QuietUntil, kept.Exceptions.Single().Note));
        Assert.Equal(TimeZoneInfo.Local.Id, (await app.GetAsync<ZoneName>(ApiRoutes.HomeZone)).Name);
        Assert.Contains("\"from\":\"18:30\"", await app.Http.GetStringAsync(ApiRoutes.Hours), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Wrong_hours_are_told_by_field_and_the_old_ones_stay()
    {
        await using var app = await RunningApp.StartAsync();
        var hours = new WorkHours
        {
            TimeZone = "Atlantis",
            Makers = 10,
            QuietFrom = new(6, 0),
            Week = [new(DayOfWeek.Monday, [new(new(20, 0), new(19, 0))])],
            Exceptions = [new(new(2027, 6, 2), new(2027, 6, 1), [])],
        };

        var problem = await RunningApp.ReadProblemAsync(await app.PutAsync(ApiRoutes.Hours, hours), 400);

        Assert.Equal(
            new HashSet<string> { "timeZone", "makers", "quietFrom", "week[0].hours[0].until", "exceptions[0].last" },
            problem.Problems.Select(p => p.Field).ToHashSet());
        Assert.Equal("", (await app.GetAsync<WorkHours>(ApiRoutes.Hours)).TimeZone);
    }

    [Theory]
    [InlineData("""{ "week": [ null ] }""")]
    [InlineData("""{ "week": null }""")]
    [InlineData("""{ "quietFrom": "25:00" }""")]
    [InlineData("""{ "exceptions": [ { "first": "2027-06-01" } ] }""")]
    public async Task A_body_that_is_none_is_refused(string body)
    {
        await using var app = await RunningApp.StartAsync();

        var response = await app.Http.PutAsync(ApiRoutes.Hours, new StringContent(body, System.Text.Encoding.UTF8, "application/json"));

        Assert.NotEmpty((await RunningApp.ReadProblemAsync(response, 400)).Problems);
    }
}
