using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using Scrapwright.Core.Pile;
using Scrapwright.Storage.Tables;

namespace Scrapwright.Storage;

public sealed partial class WorkshopStore
{
    /// <summary>The pile, in order.</summary>
    public Task<ImmutableArray<StoredOffcut>> ListOffcutsAsync(CancellationToken cancellationToken = default) =>
        ReadAsync<ImmutableArray<StoredOffcut>>(
            async context => [.. (await Pile(context).ToListAsync(cancellationToken)).Select(r => r.Stored())],
            cancellationToken);

    /// <summary>Adds offcuts at the end of the pile, all or none. Empty labels are filled in.</summary>
    public Task<AddOutcome<StoredOffcut>> AddOffcutsAsync(IReadOnlyList<NewOffcut> offcuts, CancellationToken cancellationToken = default) =>
        WriteAsync<AddOutcome<StoredOffcut>>(
            async context =>
            {
                var (rows, taken) = await AddPileAsync(context, offcuts, cancellationToken);
                return taken.IsEmpty
                    ? (new AddOutcome<StoredOffcut>.Added([.. rows.Select(r => r.Stored())]), true)
                    : (new AddOutcome<StoredOffcut>.LabelsTaken(taken), false);
            },
            cancellationToken);

    /// <summary>Changes an offcut in its place. An empty label keeps the one it has.</summary>
    public Task<ChangeOutcome<StoredOffcut>> UpdateOffcutAsync(long id, NewOffcut offcut, CancellationToken cancellationToken = default) =>
        ChangeOffcutAsync(id, deleted: false, row => row.Take(offcut.Offcut.Label.Length == 0 ? offcut.Offcut with { Label = row.Label } : offcut.Offcut, offcut.Unit), cancellationToken);

    /// <summary>Puts a deleted offcut back in its old place; one that is not deleted is left as it is.</summary>
    public Task<ChangeOutcome<StoredOffcut>> RestoreOffcutAsync(long id, CancellationToken cancellationToken = default) =>
        ChangeOffcutAsync(id, deleted: true, row => row.IsDeleted = false, cancellationToken);

    /// <summary>Deletes an offcut so that it can be restored. False when there is none of that id.</summary>
    public Task<bool> DeleteOffcutAsync(long id, CancellationToken cancellationToken = default) =>
        WriteAsync(
            async context =>
            {
                var count = await context.Offcuts.Where(r => r.Id == id && !r.IsDeleted)
                    .ExecuteUpdateAsync(set => set.SetProperty(r => r.IsDeleted, true), cancellationToken);
                return (count == 1, true);
            },
            cancellationToken);

    private static IQueryable<OffcutRow> Pile(WorkshopContext context) => context.Offcuts.Where(r => !r.IsDeleted).OrderBy(r => r.Position);

    private static async Task<(List<OffcutRow> Rows, ImmutableArray<TakenLabel> Taken)> AddPileAsync(
        WorkshopContext context, IReadOnlyList<NewOffcut> offcuts, CancellationToken cancellationToken)
    {
        var labels = await LabelsAsync(Pile(context), cancellationToken);
        var position = await context.Offcuts.MaxAsync(r => (long?)r.Position, cancellationToken) ?? 0;
        var taken = ImmutableArray.CreateBuilder<TakenLabel>();

        // Labels that were asked for come before those that are filled in.
        for (var i = 0; i < offcuts.Count; i++)
        {
            var offcut = offcuts[i].Offcut;
            if (offcut.Label.Length > 0 && !labels.TryTake(offcut)) taken.Add(new(i, offcut.Label));
        }

        var rows = new List<OffcutRow>(offcuts.Count);
        for (var i = 0; i < offcuts.Count; i++)
        {
            var offcut = offcuts[i].Offcut;
            if (offcut.Label.Length == 0) offcut = offcut with { Label = labels.Next(offcut) };
            var row = new OffcutRow { Position = ++position };
            row.Take(offcut, offcuts[i].Unit);
            rows.Add(row);
        }

        if (taken.Count > 0) return (rows, taken.ToImmutable());
        context.AddRange(rows);
        await context.SaveChangesAsync(cancellationToken);
        return (rows, []);
    }

    private static async Task<LabelMaker> LabelsAsync(IQueryable<OffcutRow> rows, CancellationToken cancellationToken) =>
        new((await rows.AsNoTracking().ToListAsync(cancellationToken)).SelectMany(r => PileLabels.Claimed(r.Offcut())));

    private Task<ChangeOutcome<StoredOffcut>> ChangeOffcutAsync(long id, bool deleted, Action<OffcutRow> change, CancellationToken cancellationToken) =>
        WriteAsync<ChangeOutcome<StoredOffcut>>(
            async context =>
            {
                var row = await context.Offcuts.SingleOrDefaultAsync(r => r.Id == id && (deleted || !r.IsDeleted), cancellationToken);
                if (row is null) return (new ChangeOutcome<StoredOffcut>.Missing(id), false);
                var labels = await LabelsAsync(Pile(context).Where(r => r.Id != id), cancellationToken);
                change(row);
                if (!labels.TryTake(row.Offcut())) return (new ChangeOutcome<StoredOffcut>.LabelTaken(row.Label), false);
                await context.SaveChangesAsync(cancellationToken);
                return (new ChangeOutcome<StoredOffcut>.Changed(row.Stored()), true);
            },
            cancellationToken);
}
