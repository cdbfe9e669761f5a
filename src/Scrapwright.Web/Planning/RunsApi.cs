using Scrapwright.Files;
using System.Net.ServerSentEvents;
using System.Runtime.CompilerServices;
using System.Text.Json;
using Scrapwright.Client.Api;
using Scrapwright.Core.Plans;
using Scrapwright.Web.Hosting;

namespace Scrapwright.Web.Planning;

/// <summary>Planning runs over HTTP.</summary>
internal static class RunsApi
{
    private static readonly TimeSpan BeatWhileRunning = TimeSpan.FromSeconds(1);

    // Below the minute after which phones and proxies drop a silent connection.
    private static readonly TimeSpan BeatWhileIdle = TimeSpan.FromSeconds(15);

    internal static void MapRuns(this IEndpointRouteBuilder app)
    {
        app.MapPost(ApiRoutes.Runs, (HttpRequest request, PlanRuns runs, CancellationToken cancellationToken) =>
            request.WithBodyAsync<RunRequest>(async asked =>
            {
                var checks = new ValueChecks();
                checks.Within("seconds", asked.Seconds, 1, 3600);
                checks.Within("seed", asked.Seed, 0, int.MaxValue);
                return checks.Problems.AsFields() is { Length: > 0 } problems ? Answers.Invalid(problems) : Answers.Of(await runs.StartAsync(asked, cancellationToken));
            }));

        app.MapGet(ApiRoutes.CurrentRun, async (PlanRuns runs, CancellationToken cancellationToken) =>
            Answers.Ok((await runs.GetAsync(cancellationToken)).Status));

        app.MapGet(ApiRoutes.CurrentRunEvents, (PlanRuns runs, IHostApplicationLifetime lifetime, HttpContext context) =>
        {
            context.Response.Headers["X-Accel-Buffering"] = "no";
            return TypedResults.ServerSentEvents(EventsAsync(runs, lifetime.ApplicationStopping, context.RequestAborted));
        });

        app.MapPost(ApiRoutes.CurrentRunCancel, async (PlanRuns runs, CancellationToken cancellationToken) =>
            Answers.Accepted(await runs.CancelAsync(cancellationToken)));
    }

    private static async IAsyncEnumerable<SseItem<string>> EventsAsync(
        PlanRuns runs, CancellationToken stopping, CancellationToken aborted, [EnumeratorCancellation] CancellationToken cancellationToken = default)
    {
        using var ending = CancellationTokenSource.CreateLinkedTokenSource(stopping, aborted, cancellationToken);
        while (!ending.IsCancellationRequested)
        {
            var (status, version) = await runs.GetAsync(CancellationToken.None);
            yield return new SseItem<string>(JsonSerializer.Serialize(status, PlanJson.Options), ApiRoutes.StatusEvent);
            await runs.WaitForChangeAsync(version, status.State == RunState.Running ? BeatWhileRunning : BeatWhileIdle, ending.Token);
        }
    }
}
