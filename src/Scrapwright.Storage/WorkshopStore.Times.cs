using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using Scrapwright.Core.Shops;
using Scrapwright.Storage.Tables;

namespace Scrapwright.Storage;

public sealed partial class WorkshopStore
{
    /// <summary>How long work took, in the order in which it was kept.</summary>
    public Task<ImmutableArray<StoredTime>> ListTimesAsync(CancellationToken cancellationToken = default) =>
        ReadAsync<ImmutableArray<StoredTime>>(
            async context => [.. (await context.Times.OrderBy(r => r.Id).ToListAsync(cancellationToken)).Select(r => r.Stored())],
            cancellationToken);

    /// <summary>Keeps one reading more. No plan changes by it.</summary>
    public Task<StoredTime> AddTimeAsync(TimeReading reading, CancellationToken cancellationToken = default) =>
        WriteAsync(
            async context =>
            {
                var row = TimeRow.Of(reading);
                context.Add(row);
                await context.SaveChangesAsync(cancellationToken);
                return (row.Stored(), true);
            },
            cancellationToken);

    /// <summary>Deletes a reading. False when there is none of that id.</summary>
    public Task<bool> DeleteTimeAsync(long id, CancellationToken cancellationToken = default) =>
        WriteAsync(async context => (await context.Times.Where(r => r.Id == id).ExecuteDeleteAsync(cancellationToken) == 1, true), cancellationToken);

    private static async Task ReplaceTimesAsync(WorkshopContext context, ImmutableArray<TimeReading> times, CancellationToken cancellationToken)
    {
        await context.Times.ExecuteDeleteAsync(cancellationToken);
        context.AddRange(times.Select(TimeRow.Of));
    }
}
