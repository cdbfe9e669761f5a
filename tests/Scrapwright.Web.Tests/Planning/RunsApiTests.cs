using System.Net;
using System.Net.ServerSentEvents;
using System.Text.Json;
using Scrapwright.Client.Api;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;
using Scrapwright.Planning;
using Scrapwright.Web.Planning;

namespace Scrapwright.Web.Tests.Planning;

public sealed class RunsApiTests
{
    [Fact]
    public async Task A_run_reports_its_progress_keeps_the_plan_and_ends()
    {
        var proceed = new TaskCompletionSource();
        await using var app = await StartAsync(async (request, limits, _, progress, cancellationToken) =>
        {
            progress!.Report(new PlanProgress("gifts made", TimeSpan.FromSeconds(1), [Level(1)], EmptyPlan(request)));
            await proceed.Task;
            Assert.Equal((7.5, 42), (limits.Seconds, limits.Seed));
            return new PlanOutcome.Planned(EmptyPlan(request) with { Levels = [Level(2)] });
        });
        Assert.Equal(HttpStatusCode.NoContent, (await app.Http.GetAsync(ApiRoutes.Plan)).StatusCode);
        Assert.Equal(RunState.Idle, (await app.GetAsync<RunStatus>(ApiRoutes.CurrentRun)).State);

        Assert.Equal(HttpStatusCode.Accepted, (await app.PostAsync(ApiRoutes.Runs, new RunRequest(7.5, 42))).StatusCode);
        await using var events = new Events(app);
        var first = await events.NextAsync(s => s.Plans == 1);
        Assert.Equal((RunState.Running, "gifts made", 1L, true), (first.State, first.Phase, first.Levels[0].Value, first.HasPlan));
        Assert.Equal(HttpStatusCode.OK, (await app.Http.GetAsync(ApiRoutes.Plan)).StatusCode);
        var busy = await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.Runs, new RunRequest()), 409);
        Assert.Equal("run", busy.Problems[0].Field);
        proceed.SetResult();
        var last = await events.NextAsync(s => s.State != RunState.Running);

        Assert.Equal((RunState.Done, 2, 2L, ""), (last.State, last.Plans, last.Levels[0].Value, last.Message));
        var plan = PlanJson.Read(await app.Http.GetStringAsync(ApiRoutes.Plan));
        Assert.Equal(2, plan.Levels[0].Value);
    }

    [Fact]
    public async Task Cancelling_ends_the_search_and_keeps_the_best_plan()
    {
        await using var app = await StartAsync(async (request, _, _, progress, cancellationToken) =>
        {
            progress!.Report(new PlanProgress("looks", TimeSpan.Zero, [], EmptyPlan(request)));
            await Task.Delay(Timeout.Infinite, cancellationToken).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
            return new PlanOutcome.Planned(EmptyPlan(request));
        });
        await app.PostAsync(ApiRoutes.Runs, new RunRequest());

        var answer = await app.Http.PostAsync(ApiRoutes.CurrentRunCancel, null);

        var status = await RunningApp.ReadAsync<RunStatus>(answer);
        Assert.Equal((HttpStatusCode.Accepted, RunState.Cancelled, true), (answer.StatusCode, status.State, status.HasPlan));
        Assert.Equal(HttpStatusCode.OK, (await app.Http.GetAsync(ApiRoutes.Plan)).StatusCode);
    }

    [Fact]
    public async Task A_search_that_throws_on_cancel_is_cancelled_and_not_failed()
    {
        await using var app = await StartAsync(async (_, _, _, _, cancellationToken) =>
        {
            await Task.Delay(Timeout.Infinite, cancellationToken);
            return new PlanOutcome.Cancelled();
        });
        await app.PostAsync(ApiRoutes.Runs, new RunRequest());

        var status = await RunningApp.ReadAsync<RunStatus>(await app.Http.PostAsync(ApiRoutes.CurrentRunCancel, null));

        Assert.Equal((RunState.Cancelled, false), (status.State, status.HasPlan));
    }

    [Fact]
    public async Task A_search_that_breaks_is_told_without_its_innards_and_the_next_one_runs()
    {
        var breaks = true;
        await using var app = await StartAsync((request, _, _, _, _) =>
            breaks ? throw new InvalidOperationException("secret innards") : Task.FromResult<PlanOutcome>(new PlanOutcome.Impossible([new UnmadeGift("a", [new Reason.OutOfTime()])])));
        await using var events = new Events(app);

        await app.PostAsync(ApiRoutes.Runs, new RunRequest());
        var failed = await events.NextAsync(s => s.State == RunState.Failed);
        breaks = false;
        await app.PostAsync(ApiRoutes.Runs, new RunRequest());
        var done = await events.NextAsync(s => s.Run > failed.Run && s.State == RunState.Done);

        Assert.NotEmpty(failed.Message);
        Assert.DoesNotContain("secret", failed.Message, StringComparison.Ordinal);
        Assert.IsType<Reason.OutOfTime>(Assert.Single(Assert.Single(done.Unmade).Reasons));
        Assert.False(done.HasPlan);
    }

    [Fact]
    public async Task The_plan_is_stale_once_the_workshop_has_changed()
    {
        await using var app = await StartAsync((request, _, _, _, _) => Task.FromResult<PlanOutcome>(new PlanOutcome.Planned(EmptyPlan(request))));
        await using var events = new Events(app);
        await app.PostAsync(ApiRoutes.Runs, new RunRequest());
        await events.NextAsync(s => s.State == RunState.Done);

        Assert.Equal("false", await StaleAsync(app));
        var row = await RunningApp.ReadAsync<OffcutRow>(await app.PostAsync(ApiRoutes.Offcuts, RunningApp.Entry("W1")));
        Assert.Equal("true", await StaleAsync(app));
        Assert.True((await app.GetAsync<WorkshopSummary>(ApiRoutes.Workshop)).PlanIsStale);
        await app.Http.DeleteAsync(ApiRoutes.Offcut(row.Id));
        Assert.Equal("false", await StaleAsync(app));
    }

    [Fact]
    public async Task A_run_and_its_plan_are_still_there_after_a_restart()
    {
        var folder = Directory.CreateTempSubdirectory("scrapwright-").FullName;
        await using (var app = await StartAsync((request, _, _, _, _) => Task.FromResult<PlanOutcome>(new PlanOutcome.Planned(EmptyPlan(request) with { Levels = [Level(3)] })), folder))
        {
            await using var events = new Events(app);
            await app.PostAsync(ApiRoutes.Runs, new RunRequest());
            await events.NextAsync(s => s.State == RunState.Done);
        }

        await using (var app = await RunningApp.StartAsync(folder: folder))
        {
            var status = await app.GetAsync<RunStatus>(ApiRoutes.CurrentRun);
            Assert.Equal((RunState.Done, true, 3L), (status.State, status.HasPlan, status.Levels[0].Value));
            Assert.Equal("false", await StaleAsync(app));
        }

        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public async Task Emptying_the_workshop_ends_the_run_and_forgets_the_plan()
    {
        await using var app = await StartAsync(async (request, _, _, progress, cancellationToken) =>
        {
            progress!.Report(new PlanProgress("looks", TimeSpan.Zero, [], EmptyPlan(request)));
            await Task.Delay(Timeout.Infinite, cancellationToken);
            return new PlanOutcome.Cancelled();
        });
        await app.PostAsync(ApiRoutes.Runs, new RunRequest());

        Assert.Equal(HttpStatusCode.NoContent, (await app.Http.DeleteAsync(ApiRoutes.Workshop)).StatusCode);

        Assert.Equal(new WorkshopSummary("", 0, 0, 0, false, false), await app.GetAsync<WorkshopSummary>(ApiRoutes.Workshop));
        Assert.Equal(RunState.Idle, (await app.GetAsync<RunStatus>(ApiRoutes.CurrentRun)).State);
        Assert.Equal(HttpStatusCode.NoContent, (await app.Http.GetAsync(ApiRoutes.Plan)).StatusCode);
    }

    [Fact]
    public async Task Without_a_gift_there_is_nothing_to_plan()
    {
        await using var app = await RunningApp.StartAsync();

        await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.Runs, new RunRequest()), 409);
    }

    [Theory]
    [InlineData(0, 1)]
    [InlineData(3601, 1)]
    [InlineData(10, -1)]
    public async Task Wrong_limits_are_told(double seconds, int seed)
    {
        await using var app = await RunningApp.StartAsync();

        var problem = await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.Runs, new RunRequest(seconds, seed)), 400);

        Assert.Single(problem.Problems);
    }

    private static async Task<RunningApp> StartAsync(MakePlan makePlan, string? folder = null)
    {
        var app = await RunningApp.StartAsync(makePlan, folder);
        (await app.PostAsync(ApiRoutes.Gifts, new Gift { Label = "a", Design = DesignCatalogue.BuiltIn[0].Key })).EnsureSuccessStatusCode();
        return app;
    }

    private static async Task<string> StaleAsync(RunningApp app) =>
        (await app.Http.GetAsync(ApiRoutes.Plan)).Headers.GetValues(ApiRoutes.StaleHeader).Single();

    private static Level Level(long value) => new() { Kind = LevelKind.GiftsMade, Value = value, Bound = 5 };

    private static Plan EmptyPlan(PlanRequest request) => new()
    {
        Request = request,
        Fingerprint = PlanJson.Fingerprint(request),
        Made = [],
        Unmade = [],
        GlueUps = [],
        Boards = [],
        Steps = [],
        Leftovers = [],
        Ledger = [],
        Rods = [],
        Shopping = [],
        Levels = [],
    };

    /// <summary>The stream of events as a page reads it.</summary>
    private sealed class Events(RunningApp app) : IAsyncDisposable
    {
        private readonly CancellationTokenSource limit = new(TimeSpan.FromSeconds(20));
        private IAsyncEnumerator<SseItem<string>>? items;

        internal async Task<RunStatus> NextAsync(Func<RunStatus, bool> wanted)
        {
            items ??= SseParser.Create(await app.Http.GetStreamAsync(ApiRoutes.CurrentRunEvents, limit.Token)).EnumerateAsync(limit.Token).GetAsyncEnumerator(limit.Token);
            while (await items.MoveNextAsync())
            {
                Assert.Equal(ApiRoutes.StatusEvent, items.Current.EventType);
                var status = JsonSerializer.Deserialize<RunStatus>(items.Current.Data, PlanJson.Options)!;
                if (wanted(status)) return status;
            }

            throw new InvalidOperationException("The stream ended.");
        }

        public async ValueTask DisposeAsync()
        {
            await limit.CancelAsync();
            if (items is not null) await items.DisposeAsync();
            limit.Dispose();
        }
    }
}
