using System.Collections.Immutable;
using Scrapwright.Client.Api;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Shops;

namespace Scrapwright.Client.Shell;

/// <summary>Pile, gifts, shop and designs as last heard from the server; screens share it and are told when it changes.</summary>
public sealed class Workshop(Server server)
{
    private bool isQuiet;

    /// <summary>Told when anything here changes.</summary>
    public event Action? Changed;

    /// <summary>True once everything has been read.</summary>
    public bool IsLoaded { get; private set; }

    /// <summary>Why it could not be read; null when it could.</summary>
    public ApiProblem? LoadProblem { get; private set; }

    /// <summary>The pile in its order.</summary>
    public ImmutableArray<OffcutRow> Pile { get; private set; } = [];

    /// <summary>The gifts in their order.</summary>
    public ImmutableArray<GiftRow> Gifts { get; private set; } = [];

    /// <summary>The designs a gift can name.</summary>
    public ImmutableArray<Design> Designs { get; private set; } = [];

    /// <summary>The shop.</summary>
    public Shop Shop { get; private set; } = new();

    /// <summary>The workshop in figures.</summary>
    public WorkshopSummary Summary { get; private set; } = new("", 0, 0, 0, false, false);

    /// <summary>Reads everything, unless it has been read already.</summary>
    public async Task LoadAsync(bool again = false)
    {
        if (IsLoaded && !again)
        {
            return;
        }

        var pile = server.GetAsync<ImmutableArray<OffcutRow>>(ApiRoutes.Offcuts);
        var gifts = server.GetAsync<ImmutableArray<GiftRow>>(ApiRoutes.Gifts);
        var shop = server.GetAsync<Shop>(ApiRoutes.Shop);
        var designs = server.GetAsync<ImmutableArray<Design>>(ApiRoutes.Designs);
        var summary = server.GetAsync<WorkshopSummary>(ApiRoutes.Workshop);
        await Task.WhenAll(pile, gifts, shop, designs, summary);
        LoadProblem = (await pile).Problem ?? (await gifts).Problem ?? (await shop).Problem ?? (await designs).Problem ?? (await summary).Problem;
        if (await pile is Answer<ImmutableArray<OffcutRow>>.Given p
            && await gifts is Answer<ImmutableArray<GiftRow>>.Given g
            && await shop is Answer<Shop>.Given s
            && await designs is Answer<ImmutableArray<Design>>.Given d
            && await summary is Answer<WorkshopSummary>.Given w)
        {
            (Pile, Gifts, Shop, Designs, Summary) = (p.Value, g.Value, s.Value, d.Value, w.Value);
            IsLoaded = true;
        }

        Changed?.Invoke();
    }

    /// <summary>Asks again how the workshop stands, after something was changed.</summary>
    public async Task RefreshSummaryAsync()
    {
        if (await server.GetAsync<WorkshopSummary>(ApiRoutes.Workshop) is Answer<WorkshopSummary>.Given given)
        {
            Summary = given.Value;
            Changed?.Invoke();
        }
    }

    /// <summary>Adds an offcut; an empty label takes the next free one.</summary>
    public async Task<Answer<OffcutRow>> AddAsync(OffcutEntry entry) =>
        Keep(await server.PostAsync<OffcutRow>(ApiRoutes.Offcuts, entry), row => Pile = Pile.Add(row));

    /// <summary>Adds many lines; those not understood come back.</summary>
    public async Task<Answer<PasteResult>> PasteAsync(PasteRequest lines) =>
        Keep(await server.PostAsync<PasteResult>(ApiRoutes.OffcutsPaste, lines), result => Pile = Pile.AddRange(result.Added));

    /// <summary>Changes an offcut.</summary>
    public async Task<Answer<OffcutRow>> ChangeAsync(long id, OffcutEntry entry) =>
        Keep(
            await server.PutAsync<OffcutRow>(ApiRoutes.Offcut(id), entry),
            row => Pile = [.. Pile.Select(old => old.Id == id ? row : old)]);

    /// <summary>Deletes an offcut.</summary>
    public async Task<Answer<bool>> DeleteOffcutAsync(long id) =>
        Keep(await server.DeleteAsync(ApiRoutes.Offcut(id)), _ => Pile = Pile.RemoveAll(row => row.Id == id));

    /// <summary>Brings a deleted offcut back to its old place.</summary>
    public async Task<Answer<OffcutRow>> RestoreOffcutAsync(long id)
    {
        var answer = await server.PostAsync<OffcutRow>(ApiRoutes.OffcutRestore(id));
        if (answer is Answer<OffcutRow>.Given
            && await server.GetAsync<ImmutableArray<OffcutRow>>(ApiRoutes.Offcuts) is Answer<ImmutableArray<OffcutRow>>.Given all)
        {
            Pile = all.Value;
        }

        return Keep(answer, row => Pile = Pile.Any(r => r.Id == row.Id) ? Pile : Pile.Add(row));
    }

    /// <summary>Adds a gift.</summary>
    public async Task<Answer<GiftRow>> AddAsync(Gift gift) =>
        Keep(await server.PostAsync<GiftRow>(ApiRoutes.Gifts, gift), row => Gifts = Gifts.Add(row));

    /// <summary>Changes a gift.</summary>
    public async Task<Answer<GiftRow>> ChangeAsync(long id, Gift gift) =>
        Keep(
            await server.PutAsync<GiftRow>(ApiRoutes.Gift(id), gift),
            row => Gifts = [.. Gifts.Select(old => old.Id == id ? row : old)]);

    /// <summary>Deletes a gift.</summary>
    public async Task<Answer<bool>> DeleteGiftAsync(long id) =>
        Keep(await server.DeleteAsync(ApiRoutes.Gift(id)), _ => Gifts = Gifts.RemoveAll(row => row.Id == id));

    /// <summary>Brings a deleted gift back to its old place.</summary>
    public async Task<Answer<GiftRow>> RestoreGiftAsync(long id)
    {
        var answer = await server.PostAsync<GiftRow>(ApiRoutes.GiftRestore(id));
        if (answer is Answer<GiftRow>.Given
            && await server.GetAsync<ImmutableArray<GiftRow>>(ApiRoutes.Gifts) is Answer<ImmutableArray<GiftRow>>.Given all)
        {
            Gifts = all.Value;
        }

        return Keep(answer, row => Gifts = Gifts.Any(r => r.Id == row.Id) ? Gifts : Gifts.Add(row));
    }

    /// <summary>Replaces the shop.</summary>
    public async Task<Answer<Shop>> ChangeAsync(Shop shop) =>
        Keep(await server.PutAsync<Shop>(ApiRoutes.Shop, shop), kept => Shop = kept);

    /// <summary>Gives one of the shop's own climates another name, also where the shop and its gifts name it. Never leaves a name that means nothing.</summary>
    /// <returns>Why it broke off; null when it is done.</returns>
    public async Task<ApiProblem?> RenameClimateAsync(string from, string to)
    {
        if (Shop.OwnClimates.FirstOrDefault(own => own.Name == from) is not { } old || to == from) return null;
        string Renamed(string climate) => string.Equals(climate.Trim(), from, StringComparison.OrdinalIgnoreCase) ? to : climate;

        // Only the letters' case differs: every name still finds it.
        if (string.Equals(from, to, StringComparison.OrdinalIgnoreCase))
            return (await ChangeAsync(Shop with { OwnClimates = Shop.OwnClimates.Replace(old, old with { Name = to }) })).Problem;

        // For a moment it has both names; nobody needs to see that.
        isQuiet = true;
        try
        {
            if ((await ChangeAsync(Shop with { OwnClimates = Shop.OwnClimates.Insert(Shop.OwnClimates.IndexOf(old), old with { Name = to }) })).Problem is { } problem) return problem;
            foreach (var row in Gifts.Where(row => Renamed(row.Gift.Climate) != row.Gift.Climate))
            {
                if ((await ChangeAsync(row.Id, row.Gift with { Climate = to })).Problem is { } ofGift) return ofGift;
            }
        }
        finally
        {
            isQuiet = false;
        }

        return (await ChangeAsync(Shop with { Climate = Renamed(Shop.Climate), OwnClimates = [.. Shop.OwnClimates.Where(own => own.Name != from)] })).Problem;
    }

    /// <summary>Opens the example workshop in place of an empty one.</summary>
    public async Task<Answer<WorkshopSummary>> OpenExampleAsync()
    {
        var answer = await server.PostAsync<WorkshopSummary>(ApiRoutes.Example);
        if (answer is Answer<WorkshopSummary>.Given)
        {
            await LoadAsync(again: true);
        }

        return answer;
    }

    /// <summary>Empties the workshop for good.</summary>
    public async Task<Answer<bool>> EmptyAsync()
    {
        var answer = await server.DeleteAsync(ApiRoutes.Workshop);
        await LoadAsync(again: true);
        return answer;
    }

    private Answer<T> Keep<T>(Answer<T> answer, Action<T> keep)
    {
        if (answer is Answer<T>.Given given)
        {
            keep(given.Value);
            if (isQuiet) return answer;
            Changed?.Invoke();

            // The figures follow in their own time: what was done, and its undo, must not wait for them.
            _ = RefreshSummaryAsync();
        }

        return answer;
    }
}
