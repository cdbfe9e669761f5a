using System.Net;
using Scrapwright.Client.Api;
using Scrapwright.Core.Plans;

namespace Scrapwright.Web.Tests.Planning;

/// <summary>The main job over HTTP with the real planner: example, run, plan, paper.</summary>
public sealed class PaperApiTests
{
    [Fact]
    public async Task The_example_is_planned_and_printed()
    {
        await using var app = await RunningApp.StartAsync();
        await app.Http.PostAsync(ApiRoutes.Example, null);
        await app.PostAsync(ApiRoutes.Runs, new RunRequest(3));
        RunStatus status;
        do
        {
            await Task.Delay(200);
            status = await app.GetAsync<RunStatus>(ApiRoutes.CurrentRun);
        }
        while (status.State == RunState.Running);

        Assert.Equal((RunState.Done, ""), (status.State, status.Message));
        var plan = PlanJson.Read(await app.Http.GetStringAsync(ApiRoutes.Plan));
        Assert.NotEmpty(plan.Made);
        foreach (var route in new[] { ApiRoutes.PlanSheets, ApiRoutes.PlanLabels })
        {
            // MediaBox in points: 612 x 792 is Letter (8.5 x 11 in), 595 x 842 rounded is A4 (ISO 216).
            Assert.StartsWith("%PDF-", await TextAsync(app, route), StringComparison.Ordinal);
            Assert.Matches(@"MediaBox ?\[ ?0 0 612 792 ?\]", await TextAsync(app, route + "?paper=letter"));
            Assert.Matches(@"MediaBox ?\[ ?0 0 595\.\d+ 841\.\d+ ?\]", await TextAsync(app, route + "?paper=a4"));
        }
    }

    [Fact]
    public async Task A_paper_that_is_not_sold_here_is_told_and_so_is_a_missing_plan()
    {
        await using var app = await RunningApp.StartAsync();

        var problem = await RunningApp.ReadProblemAsync(await app.Http.GetAsync(ApiRoutes.PlanSheets + "?paper=foolscap"), 400);
        Assert.Equal("letter or a4", problem.Problems[0].Expected);
        await RunningApp.ReadProblemAsync(await app.Http.GetAsync(ApiRoutes.PlanSheets + "?paper=a4"), 404);
    }

    private static async Task<string> TextAsync(RunningApp app, string route)
    {
        var response = await app.Http.GetAsync(route);
        Assert.Equal((HttpStatusCode.OK, "application/pdf"), (response.StatusCode, response.Content.Headers.ContentType?.MediaType));
        return System.Text.Encoding.Latin1.GetString(await response.Content.ReadAsByteArrayAsync());
    }
}
