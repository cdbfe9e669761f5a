using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using Scrapwright.Core.Gifts;
using Scrapwright.Storage.Tables;

namespace Scrapwright.Storage;

public sealed partial class WorkshopStore
{
    /// <summary>What was given, in the order it was added.</summary>
    public Task<ImmutableArray<StoredGiven>> ListGivenAsync(CancellationToken cancellationToken = default) =>
        ReadAsync<ImmutableArray<StoredGiven>>(
            async context => [.. (await GivenList(context).ToListAsync(cancellationToken)).Select(r => r.Stored())],
            cancellationToken);

    /// <summary>Adds what somebody was given.</summary>
    public Task<StoredGiven> AddGivenAsync(GivenGift given, CancellationToken cancellationToken = default) =>
        WriteAsync(async context => ((await AddGivenListAsync(context, [given], cancellationToken))[0].Stored(), true), cancellationToken);

    /// <summary>Corrects what somebody was given.</summary>
    public Task<ChangeOutcome<StoredGiven>> UpdateGivenAsync(long id, GivenGift given, CancellationToken cancellationToken = default) =>
        ChangeGivenAsync(id, deleted: false, row => row.Take(given), cancellationToken);

    /// <summary>Puts a removed row back; one that is not removed is left as it is.</summary>
    public Task<ChangeOutcome<StoredGiven>> RestoreGivenAsync(long id, CancellationToken cancellationToken = default) =>
        ChangeGivenAsync(id, deleted: true, row => row.IsDeleted = false, cancellationToken);

    /// <summary>Removes a row so that it can be restored. False when there is none of that id.</summary>
    public Task<bool> RemoveGivenAsync(long id, CancellationToken cancellationToken = default) =>
        WriteAsync(
            async context =>
            {
                var count = await context.Given.Where(r => r.Id == id && !r.IsDeleted).ExecuteUpdateAsync(set => set.SetProperty(r => r.IsDeleted, true), cancellationToken);
                return (count == 1, true);
            },
            cancellationToken);

    private static IQueryable<GivenRow> GivenList(WorkshopContext context) => context.Given.Where(r => !r.IsDeleted).OrderBy(r => r.Id);

    private static async Task<List<GivenRow>> AddGivenListAsync(WorkshopContext context, IEnumerable<GivenGift> given, CancellationToken cancellationToken)
    {
        var rows = new List<GivenRow>();
        foreach (var gift in given)
        {
            var row = new GivenRow();
            row.Take(gift);
            rows.Add(row);
        }

        context.AddRange(rows);
        await context.SaveChangesAsync(cancellationToken);
        return rows;
    }

    private Task<ChangeOutcome<StoredGiven>> ChangeGivenAsync(long id, bool deleted, Action<GivenRow> change, CancellationToken cancellationToken) =>
        WriteAsync<ChangeOutcome<StoredGiven>>(
            async context =>
            {
                if (await context.Given.SingleOrDefaultAsync(r => r.Id == id && (deleted || !r.IsDeleted), cancellationToken) is not { } row)
                    return (new ChangeOutcome<StoredGiven>.Missing(id), false);
                change(row);
                await context.SaveChangesAsync(cancellationToken);
                return (new ChangeOutcome<StoredGiven>.Changed(row.Stored()), true);
            },
            cancellationToken);
}
