using Scrapwright.Client.Api;
using Scrapwright.Core.Plans;
using Scrapwright.Planning;
using Scrapwright.Storage;

namespace Scrapwright.Web.Planning;

/// <summary>The planning run: one at a time, in the background, known to every page and kept over restarts.</summary>
internal sealed partial class PlanRuns(MakePlan makePlan, WorkshopStore store, TimeProvider clock, ILogger<PlanRuns> logger) : IHostedService, IDisposable
{
    private readonly SemaphoreSlim door = new(1, 1);
    private readonly RunBoard board = new(clock);
    private CancellationTokenSource? cancelling;
    private Task running = Task.CompletedTask;
    private bool isLoaded;

    /// <summary>The run as it stands, with a number that grows at each change.</summary>
    internal async Task<(RunStatus Status, long Version)> GetAsync(CancellationToken cancellationToken)
    {
        await door.WaitAsync(cancellationToken);
        try
        {
            await LoadAsync(cancellationToken);
            return board.Read();
        }
        finally
        {
            door.Release();
        }
    }

    /// <summary>Waits until the run is no more as it was, or for some time.</summary>
    internal Task WaitForChangeAsync(long version, TimeSpan longest, CancellationToken cancellationToken) =>
        board.WaitForChangeAsync(version, longest, cancellationToken);

    /// <summary>Begins a run on the workshop as it is now.</summary>
    internal async Task<StartOutcome> StartAsync(RunRequest asked, CancellationToken cancellationToken)
    {
        await door.WaitAsync(cancellationToken);
        try
        {
            await LoadAsync(cancellationToken);
            if (board.Read().Status is { State: RunState.Running } status) return new StartOutcome.Busy(status);
            await running;
            var request = await store.GetRequestAsync(cancellationToken);
            if (request.Gifts.IsEmpty) return new StartOutcome.NothingToPlan();
            var former = asked.Near ? StoredPlans.FindSound(await store.FindLatestPlanAsync(cancellationToken)) : null;
            var run = await store.PutRunAsync(
                new StoredRun { State = RunWords.Running, Started = clock.GetUtcNow().UtcDateTime, LimitSeconds = asked.Seconds, Seed = asked.Seed },
                cancellationToken);
            cancelling?.Dispose();
            cancelling = new CancellationTokenSource();
            board.Begin(run);
            var limits = new PlanLimits { Seconds = asked.Seconds, Seed = asked.Seed, Workers = Math.Max(1, Environment.ProcessorCount) };
            running = new PlanRun(makePlan, store, board, logger).RunAsync(run, request, limits, former, cancelling.Token);
            return new StartOutcome.Started(board.Read().Status);
        }
        finally
        {
            door.Release();
        }
    }

    /// <summary>Ends the run going on, if any, and waits until it has ended.</summary>
    internal async Task<RunStatus> CancelAsync(CancellationToken cancellationToken)
    {
        if (cancelling is { } token && !running.IsCompleted) await token.CancelAsync();
        await running.WaitAsync(cancellationToken);
        return (await GetAsync(cancellationToken)).Status;
    }

    /// <summary>Forgets the runs, after the workshop was emptied.</summary>
    internal async Task ForgetAsync(CancellationToken cancellationToken)
    {
        await door.WaitAsync(cancellationToken);
        try
        {
            board.Clear();
        }
        finally
        {
            door.Release();
        }
    }

    Task IHostedService.StartAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    async Task IHostedService.StopAsync(CancellationToken cancellationToken)
    {
        if (cancelling is { } token) await token.CancelAsync();
        await running.WaitAsync(cancellationToken).ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
    }

    public void Dispose()
    {
        cancelling?.Dispose();
        door.Dispose();
    }

    // Not at the start of the program: the first page does not wait for it.
    private async Task LoadAsync(CancellationToken cancellationToken)
    {
        if (isLoaded) return;
        if (await store.FindLatestRunAsync(cancellationToken) is { } run)
        {
            if (run.State == RunWords.Running)
            {
                run = run with { State = RunWords.Failed, Message = "The program was ended during the search." };
                await store.PutRunAsync(run, cancellationToken);
            }

            board.Show(run);
        }

        isLoaded = true;
    }
}
