using Scrapwright.Client.Api;
using Scrapwright.Storage;

namespace Scrapwright.Web.Planning;

/// <summary>How the run stands, for any number of readers on any thread; wakes those that wait for a change.</summary>
internal sealed class RunBoard(TimeProvider clock)
{
    private readonly Lock guard = new();
    private RunStatus status = new();
    private long started;
    private long version = 1;
    private TaskCompletionSource changed = NewSignal();

    internal (RunStatus Status, long Version) Read()
    {
        lock (guard)
        {
            return (status.State == RunState.Running ? status with { ElapsedSeconds = Elapsed() } : status, version);
        }
    }

    internal void Begin(StoredRun run) => Change(_ =>
    {
        started = clock.GetTimestamp();
        return new RunStatus { Run = run.Id, State = RunState.Running, Phase = "reading the workshop", LimitSeconds = run.LimitSeconds };
    });

    internal void Show(StoredRun run) => Change(_ => new RunStatus
    {
        Run = run.Id,
        State = RunWords.StateOf(run.State),
        Phase = run.Phase,
        ElapsedSeconds = run.ElapsedSeconds,
        LimitSeconds = run.LimitSeconds,
        Levels = run.Levels,
        HasFormer = run.HasFormer,
        Changes = run.Changes,
        Plans = run.Plans,
        HasPlan = run.Plans > 0,
        Unmade = run.Unmade,
        Message = run.Message,
    });

    internal void Clear() => Change(_ => new RunStatus());

    internal RunStatus Change(Func<RunStatus, RunStatus> change)
    {
        TaskCompletionSource signal;
        RunStatus now;
        lock (guard)
        {
            now = status = change(status.State == RunState.Running ? status with { ElapsedSeconds = Elapsed() } : status);
            version++;
            (signal, changed) = (changed, NewSignal());
        }

        signal.SetResult();
        return now;
    }

    internal async Task WaitForChangeAsync(long seen, TimeSpan longest, CancellationToken cancellationToken)
    {
        Task signal;
        lock (guard)
        {
            if (version != seen) return;
            signal = changed.Task;
        }

        await Task.WhenAny(signal, Task.Delay(longest, clock, cancellationToken));
    }

    private static TaskCompletionSource NewSignal() => new(TaskCreationOptions.RunContinuationsAsynchronously);

    private double Elapsed() => Math.Round(clock.GetElapsedTime(started).TotalSeconds, 2);
}
