using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using Scrapwright.Core.Gifts;
using Scrapwright.Storage.Tables;

namespace Scrapwright.Storage;

public sealed partial class WorkshopStore
{
    /// <summary>The occasions, in the order they were added.</summary>
    public Task<ImmutableArray<StoredOccasion>> ListOccasionsAsync(CancellationToken cancellationToken = default) =>
        ReadAsync<ImmutableArray<StoredOccasion>>(
            async context => [.. (await OccasionList(context).ToListAsync(cancellationToken)).Select(r => r.Stored())],
            cancellationToken);

    /// <summary>The occasions and what was given, as they stood at one moment.</summary>
    public Task<GiftYears> GetYearsAsync(CancellationToken cancellationToken = default) =>
        ReadAsync(context => YearsAsync(context, cancellationToken), cancellationToken);

    /// <summary>Adds an occasion, unless its name is taken.</summary>
    public Task<AddOutcome<StoredOccasion>> AddOccasionAsync(Occasion occasion, CancellationToken cancellationToken = default) =>
        WriteAsync<AddOutcome<StoredOccasion>>(
            async context =>
            {
                var taken = await AddOccasionListAsync(context, [occasion], cancellationToken);
                if (!taken.IsEmpty) return (new AddOutcome<StoredOccasion>.LabelsTaken(taken), false);
                return (new AddOutcome<StoredOccasion>.Added([(await OccasionList(context).OrderByDescending(r => r.Id).FirstAsync(cancellationToken)).Stored()]), true);
            },
            cancellationToken);

    /// <summary>Changes an occasion. Under a new name, gifts and what was given go with it.</summary>
    public Task<ChangeOutcome<StoredOccasion>> UpdateOccasionAsync(long id, Occasion occasion, CancellationToken cancellationToken = default) =>
        ChangeOccasionAsync(id, deleted: false, row => row.Take(occasion), cancellationToken);

    /// <summary>Puts a removed occasion back; one that is not removed is left as it is.</summary>
    public Task<ChangeOutcome<StoredOccasion>> RestoreOccasionAsync(long id, CancellationToken cancellationToken = default) =>
        ChangeOccasionAsync(id, deleted: true, row => row.IsDeleted = false, cancellationToken);

    /// <summary>Removes an occasion so that it can be restored, unless gifts are for it.</summary>
    public Task<RemoveOccasionOutcome> RemoveOccasionAsync(long id, CancellationToken cancellationToken = default) =>
        WriteAsync<RemoveOccasionOutcome>(
            async context =>
            {
                if (await context.Occasions.SingleOrDefaultAsync(r => r.Id == id && !r.IsDeleted, cancellationToken) is not { } row) return (new RemoveOccasionOutcome.Missing(), false);
                var name = row.Name;
                var labels = (await GiftList(context).ToListAsync(cancellationToken)).Where(g => GiftYears.IsSame(g.Occasion, name)).Select(g => g.Label).ToImmutableArray();
                if (!labels.IsEmpty) return (new RemoveOccasionOutcome.HasGifts(labels), false);
                row.IsDeleted = true;
                await context.SaveChangesAsync(cancellationToken);
                return (new RemoveOccasionOutcome.Removed(), true);
            },
            cancellationToken);

    /// <summary>Takes the gifts of an occasion from the list to what was given, all or nothing.</summary>
    /// <param name="name">Name of the occasion.</param>
    /// <param name="on">When they were given; null for the date it stands on.</param>
    /// <param name="stay">Labels of gifts for it that stay on the list.</param>
    /// <param name="cancellationToken">Ends the attempt; nothing is changed then.</param>
    public Task<StoredHandOver> HandOverAsync(string name, DateOnly? on, ImmutableArray<string> stay, CancellationToken cancellationToken = default) =>
        WriteAsync(
            async context =>
            {
                var list = await GiftList(context).ToListAsync(cancellationToken);
                var years = await YearsAsync(context, cancellationToken);
                var outcome = HandingOver.Of([.. list.Select(r => r.Gift())], years, name, on, stay, Today());
                if (outcome is not HandOver.Done done) return (new StoredHandOver(outcome, [], [], default), false);
                var left = done.Left.Select(g => g.Label).ToHashSet(StringComparer.OrdinalIgnoreCase);
                var leaving = list.Where(r => !left.Contains(r.Label)).ToArray();
                foreach (var row in leaving) row.IsDeleted = true;
                var occasions = await OccasionList(context).ToListAsync(cancellationToken);
                var occasion = occasions.First(r => GiftYears.IsSame(r.Name, done.Occasion.Name));
                var before = occasion.Date;
                occasion.Take(done.Occasion);
                var given = await AddGivenListAsync(context, done.Given, cancellationToken);
                return (new StoredHandOver(done, [.. leaving.Select(r => r.Id)], [.. given.Select(r => r.Stored())], before), true);
            },
            cancellationToken);

    /// <summary>Takes a hand-over back: the gifts are on the list again, nobody has been given them, and the occasion is on its date of before. All or nothing.</summary>
    /// <param name="gifts">Ids of the gifts that left the list.</param>
    /// <param name="given">Ids of the rows of what was given.</param>
    /// <param name="occasion">Name of the occasion.</param>
    /// <param name="date">Its date of before.</param>
    /// <param name="cancellationToken">Ends the attempt; nothing is changed then.</param>
    /// <returns>The label of a gift that is on something else by now, so that nothing was taken back; empty when it was.</returns>
    public Task<string> TakeBackAsync(ImmutableArray<long> gifts, ImmutableArray<long> given, string occasion, DateOnly date, CancellationToken cancellationToken = default) =>
        WriteAsync(
            async context =>
            {
                var labels = (await GiftList(context).Select(r => r.Label).ToListAsync(cancellationToken)).ToHashSet(StringComparer.OrdinalIgnoreCase);
                foreach (var row in await context.Gifts.Where(r => gifts.Contains(r.Id) && r.IsDeleted).ToListAsync(cancellationToken))
                {
                    if (!labels.Add(row.Label)) return (row.Label, false);
                    row.IsDeleted = false;
                }

                foreach (var row in await context.Given.Where(r => given.Contains(r.Id)).ToListAsync(cancellationToken)) row.IsDeleted = true;
                var occasions = await OccasionList(context).ToListAsync(cancellationToken);
                if (occasions.FirstOrDefault(r => GiftYears.IsSame(r.Name, occasion)) is { } kept) kept.Date = date;
                await context.SaveChangesAsync(cancellationToken);
                return ("", true);
            },
            cancellationToken);

    private static IQueryable<OccasionRow> OccasionList(WorkshopContext context) => context.Occasions.Where(r => !r.IsDeleted).OrderBy(r => r.Id);

    private DateOnly Today() => DateOnly.FromDateTime(clock.GetLocalNow().DateTime);

    private static async Task<GiftYears> YearsAsync(WorkshopContext context, CancellationToken cancellationToken) => new(
        [.. (await OccasionList(context).ToListAsync(cancellationToken)).Select(r => r.Occasion())],
        [.. (await GivenList(context).ToListAsync(cancellationToken)).Select(r => r.Given())]);

    private static async Task<ImmutableArray<TakenLabel>> AddOccasionListAsync(WorkshopContext context, IReadOnlyList<Occasion> occasions, CancellationToken cancellationToken)
    {
        var names = (await OccasionList(context).Select(r => r.Name).ToListAsync(cancellationToken)).ToHashSet(StringComparer.OrdinalIgnoreCase);
        ImmutableArray<TakenLabel> taken = [.. occasions.Index().Where(o => !names.Add(o.Item.Name.Trim())).Select(o => new TakenLabel(o.Index, o.Item.Name))];
        if (!taken.IsEmpty) return taken;
        foreach (var occasion in occasions)
        {
            var row = new OccasionRow();
            row.Take(occasion);
            context.Add(row);
        }

        await context.SaveChangesAsync(cancellationToken);
        return [];
    }

    private Task<ChangeOutcome<StoredOccasion>> ChangeOccasionAsync(long id, bool deleted, Action<OccasionRow> change, CancellationToken cancellationToken) =>
        WriteAsync<ChangeOutcome<StoredOccasion>>(
            async context =>
            {
                var row = await context.Occasions.SingleOrDefaultAsync(r => r.Id == id && (deleted || !r.IsDeleted), cancellationToken);
                if (row is null) return (new ChangeOutcome<StoredOccasion>.Missing(id), false);
                var before = row.Name;
                change(row);
                var name = row.Name;
                if (await context.Occasions.AnyAsync(r => r.Id != id && !r.IsDeleted && r.Name == name, cancellationToken)) return (new ChangeOutcome<StoredOccasion>.LabelTaken(name), false);
                if (name != before) await RenameAsync(context, before, name, cancellationToken);
                await context.SaveChangesAsync(cancellationToken);
                return (new ChangeOutcome<StoredOccasion>.Changed(row.Stored()), true);
            },
            cancellationToken);

    private static async Task RenameAsync(WorkshopContext context, string before, string name, CancellationToken cancellationToken)
    {
        // Deleted rows too: they may come back.
        foreach (var gift in (await context.Gifts.ToListAsync(cancellationToken)).Where(g => GiftYears.IsSame(g.Occasion, before))) gift.Occasion = name;
        foreach (var given in (await context.Given.ToListAsync(cancellationToken)).Where(g => GiftYears.IsSame(g.Occasion, before))) given.Occasion = name;
    }
}
