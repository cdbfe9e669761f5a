using System.Collections.Immutable;
using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Core.Shops;
using Scrapwright.Storage.Tables;

namespace Scrapwright.Storage;

public sealed partial class WorkshopStore
{
    /// <summary>All the facts a plan is made from, as they stood at one moment: every gift with the date it is due, seen from today.</summary>
    public Task<PlanRequest> GetRequestAsync(CancellationToken cancellationToken = default) =>
        ReadAsync(
            async context =>
            {
                var request = await ListedAsync(context, cancellationToken);
                return request with { Gifts = (await YearsAsync(context, cancellationToken)).Dated(request.Gifts, Today()) };
            },
            cancellationToken);

    /// <summary>The gifts of the list alone, each with the date it is due, seen from today.</summary>
    public Task<ImmutableArray<Gift>> GetDatedGiftsAsync(CancellationToken cancellationToken = default) =>
        ReadAsync(
            async context => (await YearsAsync(context, cancellationToken)).Dated([.. (await GiftList(context).ToListAsync(cancellationToken)).Select(r => r.Gift())], Today()),
            cancellationToken);

    /// <summary>A request with the gifts as they are listed: one that names an occasion has no date but one of its own.</summary>
    public Task<PlanRequest> GetListedAsync(CancellationToken cancellationToken = default) =>
        ReadAsync(context => ListedAsync(context, cancellationToken), cancellationToken);

    /// <summary>The shop; the default one when none was kept.</summary>
    public Task<Shop> GetShopAsync(CancellationToken cancellationToken = default) =>
        ReadAsync(async context => ShopOf(await context.Shop.SingleOrDefaultAsync(cancellationToken)), cancellationToken);

    /// <summary>Keeps the shop.</summary>
    public Task PutShopAsync(Shop shop, CancellationToken cancellationToken = default) =>
        ReplaceAsync(new WorkshopContents { Shop = shop }, cancellationToken: cancellationToken);

    /// <summary>When the shop is worked in; the usual hours when none were kept.</summary>
    public Task<WorkHours> GetHoursAsync(CancellationToken cancellationToken = default) =>
        ReadAsync(async context => HoursOf(await context.Shop.SingleOrDefaultAsync(cancellationToken)), cancellationToken);

    /// <summary>Keeps when the shop is worked in. No plan changes by it.</summary>
    public Task PutHoursAsync(WorkHours hours, CancellationToken cancellationToken = default) =>
        ReplaceAsync(new WorkshopContents { Hours = hours }, cancellationToken: cancellationToken);

    /// <summary>What the maker has decided.</summary>
    public Task<MakerChoices> GetChoicesAsync(CancellationToken cancellationToken = default) =>
        ReadAsync(async context => ChoicesOf(await context.Shop.SingleOrDefaultAsync(cancellationToken)), cancellationToken);

    /// <summary>Keeps what the maker has decided, in place of what was kept.</summary>
    public Task PutChoicesAsync(MakerChoices choices, CancellationToken cancellationToken = default) =>
        ReplaceAsync(new WorkshopContents { Choices = choices }, cancellationToken: cancellationToken);

    /// <summary>Keeps the workshop's name.</summary>
    public Task PutNameAsync(string name, CancellationToken cancellationToken = default) =>
        ReplaceAsync(new WorkshopContents { Name = name }, cancellationToken: cancellationToken);

    /// <summary>The designs beside the built-in ones, by key.</summary>
    public Task<ImmutableArray<Design>> ListDesignsAsync(CancellationToken cancellationToken = default) =>
        ReadAsync<ImmutableArray<Design>>(
            async context => [.. (await context.Designs.OrderBy(r => r.Key).ToListAsync(cancellationToken)).Select(DesignOf)],
            cancellationToken);

    /// <summary>Keeps a design in place of the one with its key, if any.</summary>
    public Task PutDesignAsync(Design design, CancellationToken cancellationToken = default) =>
        WriteAsync(
            async context =>
            {
                await context.Designs.Where(r => r.Key == design.Key).ExecuteDeleteAsync(cancellationToken);
                context.Add(RowOf(design));
                await context.SaveChangesAsync(cancellationToken);
                return (true, true);
            },
            cancellationToken);

    /// <summary>Deletes a design. False when there is none of that key.</summary>
    public Task<bool> DeleteDesignAsync(string key, CancellationToken cancellationToken = default) =>
        WriteAsync(
            async context => (await context.Designs.Where(r => r.Key == key).ExecuteDeleteAsync(cancellationToken) == 1, true),
            cancellationToken);

    /// <summary>Puts new contents in place of the old, all or nothing. What it replaces is gone for good.</summary>
    /// <param name="contents">The new contents; what is null stays.</param>
    /// <param name="onlyWhenEmpty">Refuse when there are offcuts or gifts already.</param>
    /// <param name="cancellationToken">Ends the attempt; nothing is changed then.</param>
    public Task<ReplaceOutcome> ReplaceAsync(WorkshopContents contents, bool onlyWhenEmpty = false, CancellationToken cancellationToken = default) =>
        WriteAsync<ReplaceOutcome>(
            async context =>
            {
                if (onlyWhenEmpty && (await Pile(context).AnyAsync(cancellationToken) || await GiftList(context).AnyAsync(cancellationToken)))
                    return (new ReplaceOutcome.NotEmpty(), false);
                ImmutableArray<TakenLabel> pileTaken = [], giftsTaken = [];
                if (contents.Pile is { } pile)
                {
                    await context.Offcuts.ExecuteDeleteAsync(cancellationToken);
                    (_, pileTaken) = await AddPileAsync(context, pile, cancellationToken);
                }

                if (contents.Gifts is { } gifts)
                {
                    await context.Gifts.ExecuteDeleteAsync(cancellationToken);
                    (_, giftsTaken) = await AddGiftListAsync(context, gifts, cancellationToken);
                }

                if (contents.Occasions is { } occasions)
                {
                    await context.Occasions.ExecuteDeleteAsync(cancellationToken);
                    if (await AddOccasionListAsync(context, occasions, cancellationToken) is { IsEmpty: false } names) return (new ReplaceOutcome.NamesTaken(names), false);
                }

                if (contents.Given is { } given)
                {
                    await context.Given.ExecuteDeleteAsync(cancellationToken);
                    await AddGivenListAsync(context, given, cancellationToken);
                }

                if (!pileTaken.IsEmpty || !giftsTaken.IsEmpty) return (new ReplaceOutcome.LabelsTaken(pileTaken, giftsTaken), false);
                if (contents.Designs is { } designs)
                {
                    await context.Designs.ExecuteDeleteAsync(cancellationToken);
                    context.AddRange(designs.Select(RowOf));
                }

                if (contents.Times is { } times) await ReplaceTimesAsync(context, times, cancellationToken);
                if (contents.Shop is not null || contents.Name is not null || contents.Choices is not null || contents.Hours is not null || contents.Prices is not null || contents.Jigs is not null) await ChangeShopAsync(context, contents, cancellationToken);
                await context.SaveChangesAsync(cancellationToken);
                return (new ReplaceOutcome.Replaced(), true);
            },
            cancellationToken);

    /// <summary>Empties the workshop for good: pile, gifts, occasions, what was given, shop, hours, times, prices, jigs, designs, plans, runs, calendars and marks.</summary>
    public Task ClearAsync(CancellationToken cancellationToken = default) =>
        WriteAsync(
            async context =>
            {
                await context.Offcuts.ExecuteDeleteAsync(cancellationToken);
                await context.Gifts.ExecuteDeleteAsync(cancellationToken);
                await context.Occasions.ExecuteDeleteAsync(cancellationToken);
                await context.Given.ExecuteDeleteAsync(cancellationToken);
                await context.Shop.ExecuteDeleteAsync(cancellationToken);
                await context.Designs.ExecuteDeleteAsync(cancellationToken);
                await context.Plans.ExecuteDeleteAsync(cancellationToken);
                await context.Runs.ExecuteDeleteAsync(cancellationToken);
                await context.Calendars.ExecuteDeleteAsync(cancellationToken);
                await context.Times.ExecuteDeleteAsync(cancellationToken);
                return (true, true);
            },
            cancellationToken);

    private static async Task<PlanRequest> ListedAsync(WorkshopContext context, CancellationToken cancellationToken)
    {
        var shop = await context.Shop.SingleOrDefaultAsync(cancellationToken);
        return new PlanRequest
        {
            Workshop = shop?.Name ?? "",
            Shop = ShopOf(shop),
            Choices = ChoicesOf(shop),
            Pile = [.. (await Pile(context).ToListAsync(cancellationToken)).Select(r => r.Offcut())],
            Gifts = [.. (await GiftList(context).ToListAsync(cancellationToken)).Select(r => r.Gift())],
            Designs = [.. (await context.Designs.OrderBy(r => r.Key).ToListAsync(cancellationToken)).Select(DesignOf)],
        };
    }

    private static async Task ChangeShopAsync(WorkshopContext context, WorkshopContents contents, CancellationToken cancellationToken)
    {
        var row = await context.Shop.SingleOrDefaultAsync(cancellationToken);
        if (row is null) context.Add(row = new ShopRow());
        if (contents.Name is { } name) row.Name = name;
        if (contents.Choices is { } choices) row.Choices = choices.AreNone ? null : JsonSerializer.Serialize(choices, PlanJson.Options);
        if (contents.Hours is { } hours) row.Hours = JsonSerializer.Serialize(hours, PlanJson.Options);
        if (contents.Prices is { } prices) row.Prices = prices.IsEmpty ? null : JsonSerializer.Serialize(prices, PlanJson.Options);
        if (contents.Jigs is { } jigs) row.Jigs = jigs.IsEmpty ? null : JsonSerializer.Serialize(jigs, PlanJson.Options);
        if (contents.Shop is { } shop) row.Json = JsonSerializer.Serialize(shop, PlanJson.Options);
    }

    private static Shop ShopOf(ShopRow? row) =>
        row?.Json is { } json ? JsonSerializer.Deserialize<Shop>(json, PlanJson.Options)! : new();

    private static WorkHours HoursOf(ShopRow? row) =>
        row?.Hours is { } json ? JsonSerializer.Deserialize<WorkHours>(json, PlanJson.Options)! : new();

    private static MakerChoices ChoicesOf(ShopRow? row) =>
        row?.Choices is { } json ? JsonSerializer.Deserialize<MakerChoices>(json, PlanJson.Options)! : new();

    private static DesignRow RowOf(Design design) => new() { Key = design.Key, Json = JsonSerializer.Serialize(design, PlanJson.Options) };

    private static Design DesignOf(DesignRow row) => JsonSerializer.Deserialize<Design>(row.Json, PlanJson.Options)!;
}
