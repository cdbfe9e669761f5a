using System.Collections.Immutable;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Scrapwright.Core.Plans;
using Scrapwright.Storage.Tables;

namespace Scrapwright.Storage;

public sealed partial class WorkshopStore
{
    /// <summary>How many plans and runs are kept; older ones go.</summary>
    public const int KeptPlans = 10;

    /// <summary>The latest plan, or null.</summary>
    public Task<StoredPlan?> FindLatestPlanAsync(CancellationToken cancellationToken = default) =>
        ReadAsync(
            async context => (await context.Plans.OrderByDescending(r => r.Id).FirstOrDefaultAsync(cancellationToken))?.Stored(),
            cancellationToken);

    /// <summary>The plans that are kept, the latest first.</summary>
    public Task<ImmutableArray<StoredPlan>> GetPlansAsync(CancellationToken cancellationToken = default) =>
        ReadAsync(
            async context => (await context.Plans.OrderByDescending(r => r.Id).ToListAsync(cancellationToken)).Select(r => r.Stored()).ToImmutableArray(),
            cancellationToken);

    /// <summary>The fingerprint of the latest plan's request, or null; quicker than the plan.</summary>
    public Task<string?> FindLatestFingerprintAsync(CancellationToken cancellationToken = default) =>
        ReadAsync(
            context => context.Plans.OrderByDescending(r => r.Id).Select(r => r.Fingerprint).FirstOrDefaultAsync(cancellationToken),
            cancellationToken);

    /// <summary>Keeps a plan as the latest.</summary>
    public Task<StoredPlan> AddPlanAsync(Plan plan, CancellationToken cancellationToken = default) =>
        WriteAsync(
            async context =>
            {
                var row = new PlanRow { Created = clock.GetUtcNow().UtcDateTime, Fingerprint = plan.Fingerprint, Json = PlanJson.Write(plan) };
                context.Add(row);
                await context.SaveChangesAsync(cancellationToken);
                await context.Plans.Where(r => r.Id <= row.Id - KeptPlans).ExecuteDeleteAsync(cancellationToken);
                return (row.Stored(), true);
            },
            cancellationToken);

    /// <summary>The latest run, or null.</summary>
    public Task<StoredRun?> FindLatestRunAsync(CancellationToken cancellationToken = default) =>
        ReadAsync(
            async context => await context.Runs.OrderByDescending(r => r.Id).FirstOrDefaultAsync(cancellationToken) is { } row
                ? JsonSerializer.Deserialize<StoredRun>(row.Json, PlanJson.Options)! with { Id = row.Id }
                : null,
            cancellationToken);

    /// <summary>Keeps a run: a new one when its id is 0, else in place of what was kept of it.</summary>
    /// <returns>The run with its id.</returns>
    public Task<StoredRun> PutRunAsync(StoredRun run, CancellationToken cancellationToken = default) =>
        WriteAsync(
            async context =>
            {
                var row = await context.Runs.SingleOrDefaultAsync(r => r.Id == run.Id, cancellationToken);
                if (row is null) context.Add(row = new RunRow());
                row.State = run.State;
                row.Started = run.Started;
                row.Json = JsonSerializer.Serialize(run, PlanJson.Options);
                await context.SaveChangesAsync(cancellationToken);
                await context.Runs.Where(r => r.Id <= row.Id - KeptPlans).ExecuteDeleteAsync(cancellationToken);
                return (run with { Id = row.Id }, true);
            },
            cancellationToken);
}
