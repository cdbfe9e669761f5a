using Scrapwright.Client.Api;
using Scrapwright.Core.Plans;
using Scrapwright.Planning;
using Scrapwright.Storage;

namespace Scrapwright.Web.Planning;

/// <summary>One planning run from its beginning to its end. Each better plan is kept as soon as it is found.</summary>
internal sealed partial class PlanRun(MakePlan makePlan, WorkshopStore store, RunBoard board, ILogger logger)
{
    private Plan? kept;

    internal async Task RunAsync(StoredRun run, PlanRequest request, PlanLimits limits, Plan? former, CancellationToken cancellationToken)
    {
        RunStatus end;
        try
        {
            var outcome = await SearchAsync(request, limits, former, cancellationToken);
            if (outcome is PlanOutcome.Planned planned) await KeepAsync(planned.Plan);
            end = EndOf(outcome, board.Read().Status, cancellationToken.IsCancellationRequested);
            if (former is not null && kept is not null) end = end with { HasFormer = true, Changes = PlanChanges.Between(former, kept) };
        }
        catch (OperationCanceledException) when (cancellationToken.IsCancellationRequested)
        {
            end = board.Read().Status with { State = RunState.Cancelled };
        }
        catch (Exception e) when (e is not OutOfMemoryException)
        {
            LogFault(logger, e);
            var message = e is WorkshopUnreadableException ? e.Message : "The search failed by a mistake of the program; its log says more.";
            end = board.Read().Status with { State = RunState.Failed, Message = message };
        }

        // Told last: who sees the end may begin the next run at once.
        await PutAsync(run, end);
        board.Change(_ => end);
    }

    private static RunStatus EndOf(PlanOutcome outcome, RunStatus status, bool cancelled) => outcome switch
    {
        PlanOutcome.Planned planned => status with { State = cancelled ? RunState.Cancelled : RunState.Done, Levels = planned.Plan.Levels },
        PlanOutcome.Impossible impossible => status with { State = RunState.Done, Unmade = impossible.Unmade },
        PlanOutcome.Cancelled => status with { State = RunState.Cancelled },
        _ => throw new InvalidOperationException($"Unknown outcome {outcome}."),
    };

    private async Task<PlanOutcome> SearchAsync(PlanRequest request, PlanLimits limits, Plan? former, CancellationToken cancellationToken)
    {
        var progress = new ProgressQueue();
        var search = Task.Run(
            async () =>
            {
                try
                {
                    return await makePlan(request, limits, former, progress, cancellationToken);
                }
                finally
                {
                    progress.Complete();
                }
            },
            CancellationToken.None);

        // Not the run's token: what was found before a cancel is still to be kept.
        while (await progress.Reader.WaitToReadAsync(CancellationToken.None))
        {
            Plan? best = null;
            while (progress.Reader.TryRead(out var report))
            {
                best = report.Best ?? best;
                board.Change(status => status with { Phase = report.Phase, Levels = report.Levels.IsDefaultOrEmpty ? status.Levels : report.Levels });
            }

            if (best is not null) await KeepAsync(best);
        }

        return await search;
    }

    private async Task KeepAsync(Plan plan)
    {
        if (ReferenceEquals(plan, kept)) return;
        await store.AddPlanAsync(plan);
        kept = plan;
        board.Change(status => status with { HasPlan = true, Plans = status.Plans + 1 });
    }

    private async Task PutAsync(StoredRun run, RunStatus end)
    {
        try
        {
            await store.PutRunAsync(run with
            {
                State = end.State switch { RunState.Done => RunWords.Done, RunState.Cancelled => RunWords.Cancelled, _ => RunWords.Failed },
                ElapsedSeconds = end.ElapsedSeconds,
                Phase = end.Phase,
                Plans = end.Plans,
                Levels = end.Levels,
                HasFormer = end.HasFormer,
                Changes = end.Changes,
                Unmade = end.Unmade,
                Message = end.Message,
            });
        }
        catch (WorkshopUnreadableException e)
        {
            LogFault(logger, e);
        }
    }

    [LoggerMessage(Level = LogLevel.Error, Message = "A planning run failed.")]
    private static partial void LogFault(ILogger logger, Exception fault);
}
