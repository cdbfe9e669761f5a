using System.Text.Json;
using Microsoft.JSInterop;
using Scrapwright.Client.Api;
using Scrapwright.Client.Browser;
using Scrapwright.Core.Plans;

namespace Scrapwright.Client.Shell;

/// <summary>The planning run on the server as its events tell it, and the latest plan. Outlives page changes; a reload asks the server again.</summary>
public sealed class PlanRun(Server server, BrowserDoor browser, Workshop workshop) : IAsyncDisposable
{
    private DotNetObjectReference<PlanRun>? self;
    private int stream;
    private long seen = -1;

    /// <summary>Told when the run or the plan changes.</summary>
    public event Action? Changed;

    /// <summary>Where the run stands.</summary>
    public RunStatus Status { get; private set; } = new();

    /// <summary>The latest plan; null when there is none.</summary>
    public Plan? Plan { get; private set; }

    /// <summary>True when the workshop has changed since the plan was made.</summary>
    public bool IsStale => Plan is not null && workshop.Summary.PlanIsStale;

    /// <summary>True once the server has been asked for the plan.</summary>
    public bool IsLoaded { get; private set; }

    /// <summary>False while the line to the server is broken; the browser opens it again by itself.</summary>
    public bool IsListening { get; private set; } = true;

    /// <summary>Begins to listen, once, and reads run and plan.</summary>
    public async Task ListenAsync()
    {
        if (self is null)
        {
            self = DotNetObjectReference.Create(this);
            if (await server.GetAsync<RunStatus>(ApiRoutes.CurrentRun) is Answer<RunStatus>.Given { Value: { } status })
            {
                Take(status);
            }

            stream = await browser.OpenEventsAsync(ApiRoutes.CurrentRunEvents, ApiRoutes.StatusEvent, self);
        }

        if (!IsLoaded)
        {
            await FetchPlanAsync();
        }
    }

    /// <summary>Starts a run.</summary>
    public async Task<Answer<RunStatus>> StartAsync(double seconds, int seed) =>
        Take(await server.PostAsync<RunStatus>(ApiRoutes.Runs, new RunRequest(seconds, seed)));

    /// <summary>Ends the run; the best plan so far stays.</summary>
    public async Task<Answer<RunStatus>> CancelAsync() =>
        Take(await server.PostAsync<RunStatus>(ApiRoutes.CurrentRunCancel));

    /// <summary>An event from the server. Called by the browser.</summary>
    [JSInvokable]
    public async Task EventArrived(string text)
    {
        RunStatus? status;
        try
        {
            status = JsonSerializer.Deserialize<RunStatus>(text, PlanJson.Options);
        }
        catch (JsonException)
        {
            return;
        }

        if (status is null)
        {
            return;
        }

        var ended = Status.State == RunState.Running && status.State != RunState.Running;
        Take(status);

        // The first plan of a run is shown at once and the last at its end: a phone reads a plan slower than the search finds better ones.
        var isFirstPlan = status.HasPlan && seen != status.Run;
        seen = status.HasPlan ? status.Run : seen;
        Changed?.Invoke();
        if (isFirstPlan || ended)
        {
            await FetchPlanAsync();
            await workshop.RefreshSummaryAsync();
        }
    }

    /// <summary>The line opened or broke. Called by the browser.</summary>
    [JSInvokable]
    public void EventsOpen(bool open)
    {
        if (open != IsListening)
        {
            IsListening = open;
            Changed?.Invoke();
        }
    }

    /// <summary>Reads the plan again.</summary>
    public async Task FetchPlanAsync()
    {
        if (await server.GetAsync<Plan?>(ApiRoutes.Plan) is Answer<Plan?>.Given given)
        {
            await CarryTicksAsync(given.Value);
            Plan = given.Value;
            IsLoaded = true;
        }

        Changed?.Invoke();
    }

    /// <summary>Shows a plan that the server has kept already.</summary>
    public async Task ShowAsync(Plan plan)
    {
        await CarryTicksAsync(plan);
        Plan = plan;
        Changed?.Invoke();
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (self is not null)
        {
            await browser.CloseEventsAsync(stream);
            self.Dispose();
        }
    }

    // A choice that is put into the plan makes it another one, but its steps are those that the maker has ticked.
    private async Task CarryTicksAsync(Plan? now)
    {
        if (Plan is not { } before || now is null || now.Fingerprint == before.Fingerprint) return;
        if (!StepsOf(before).SequenceEqual(StepsOf(now))) return;
        if (await browser.ReadAsync(Drafts.Ticks(before.Fingerprint)) is { } ticks) await browser.WriteAsync(Drafts.Ticks(now.Fingerprint), ticks);
    }

    private static IEnumerable<string> StepsOf(Plan plan) =>
        plan.Steps.Select(step => $"{step.Operation} {step.Gift}: {string.Join(' ', step.Works.SelectMany(w => w.In).Order(StringComparer.Ordinal))}");

    private Answer<RunStatus> Take(Answer<RunStatus> answer)
    {
        if (answer is Answer<RunStatus>.Given given)
        {
            Take(given.Value);
            Changed?.Invoke();
        }

        return answer;
    }

    private void Take(RunStatus status)
    {
        if (status.Run >= Status.Run)
        {
            Status = status;
        }
    }
}
