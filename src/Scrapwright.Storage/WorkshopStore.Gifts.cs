using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using Scrapwright.Core.Gifts;
using Scrapwright.Storage.Tables;

namespace Scrapwright.Storage;

public sealed partial class WorkshopStore
{
    /// <summary>The gifts, in order.</summary>
    public Task<ImmutableArray<StoredGift>> ListGiftsAsync(CancellationToken cancellationToken = default) =>
        ReadAsync<ImmutableArray<StoredGift>>(
            async context => [.. (await GiftList(context).ToListAsync(cancellationToken)).Select(r => r.Stored())],
            cancellationToken);

    /// <summary>Adds gifts at the end of the list, all or none.</summary>
    public Task<AddOutcome<StoredGift>> AddGiftsAsync(IReadOnlyList<Gift> gifts, CancellationToken cancellationToken = default) =>
        WriteAsync<AddOutcome<StoredGift>>(
            async context =>
            {
                var (rows, taken) = await AddGiftListAsync(context, gifts, cancellationToken);
                return taken.IsEmpty
                    ? (new AddOutcome<StoredGift>.Added([.. rows.Select(r => r.Stored())]), true)
                    : (new AddOutcome<StoredGift>.LabelsTaken(taken), false);
            },
            cancellationToken);

    /// <summary>Changes a gift in its place.</summary>
    public Task<ChangeOutcome<StoredGift>> UpdateGiftAsync(long id, Gift gift, CancellationToken cancellationToken = default) =>
        ChangeGiftAsync(id, deleted: false, row => row.Take(gift), cancellationToken);

    /// <summary>Puts a deleted gift back in its old place; one that is not deleted is left as it is.</summary>
    public Task<ChangeOutcome<StoredGift>> RestoreGiftAsync(long id, CancellationToken cancellationToken = default) =>
        ChangeGiftAsync(id, deleted: true, row => row.IsDeleted = false, cancellationToken);

    /// <summary>Deletes a gift so that it can be restored. False when there is none of that id.</summary>
    public Task<bool> DeleteGiftAsync(long id, CancellationToken cancellationToken = default) =>
        WriteAsync(
            async context =>
            {
                var count = await context.Gifts.Where(r => r.Id == id && !r.IsDeleted)
                    .ExecuteUpdateAsync(set => set.SetProperty(r => r.IsDeleted, true), cancellationToken);
                return (count == 1, true);
            },
            cancellationToken);

    private static IQueryable<GiftRow> GiftList(WorkshopContext context) => context.Gifts.Where(r => !r.IsDeleted).OrderBy(r => r.Position);

    private static async Task<(List<GiftRow> Rows, ImmutableArray<TakenLabel> Taken)> AddGiftListAsync(
        WorkshopContext context, IReadOnlyList<Gift> gifts, CancellationToken cancellationToken)
    {
        var labels = (await GiftList(context).Select(r => r.Label).ToListAsync(cancellationToken)).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var position = await context.Gifts.MaxAsync(r => (long?)r.Position, cancellationToken) ?? 0;
        var taken = ImmutableArray.CreateBuilder<TakenLabel>();
        var rows = new List<GiftRow>(gifts.Count);
        for (var i = 0; i < gifts.Count; i++)
        {
            if (!labels.Add(gifts[i].Label)) taken.Add(new(i, gifts[i].Label));
            var row = new GiftRow { Position = ++position };
            row.Take(gifts[i]);
            rows.Add(row);
        }

        if (taken.Count > 0) return (rows, taken.ToImmutable());
        context.AddRange(rows);
        await context.SaveChangesAsync(cancellationToken);
        return (rows, []);
    }

    private Task<ChangeOutcome<StoredGift>> ChangeGiftAsync(long id, bool deleted, Action<GiftRow> change, CancellationToken cancellationToken) =>
        WriteAsync<ChangeOutcome<StoredGift>>(
            async context =>
            {
                var row = await context.Gifts.SingleOrDefaultAsync(r => r.Id == id && (deleted || !r.IsDeleted), cancellationToken);
                if (row is null) return (new ChangeOutcome<StoredGift>.Missing(id), false);
                change(row);
                var label = row.Label;
                if (await context.Gifts.AnyAsync(r => r.Id != id && !r.IsDeleted && r.Label == label, cancellationToken))
                    return (new ChangeOutcome<StoredGift>.LabelTaken(label), false);
                await context.SaveChangesAsync(cancellationToken);
                return (new ChangeOutcome<StoredGift>.Changed(row.Stored()), true);
            },
            cancellationToken);
}
