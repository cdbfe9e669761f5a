using System.Collections.Immutable;
using Scrapwright.Client.Api;
using Scrapwright.Client.Shell;
using Scrapwright.Core.Gifts;

namespace Scrapwright.Client.Years;

/// <summary>Occasions and who got what, as last heard from the server; screens share it and are told when it changes.</summary>
public sealed class YearsBoard(Server server, Workshop workshop)
{
    /// <summary>Told when anything here changes.</summary>
    public event Action? Changed;

    /// <summary>True once it has been read.</summary>
    public bool IsLoaded { get; private set; }

    /// <summary>The occasions, in the order they were added.</summary>
    public ImmutableArray<OccasionRow> Occasions { get; private set; } = [];

    /// <summary>What was given, in the order it was added.</summary>
    public ImmutableArray<GivenRow> Given { get; private set; } = [];

    /// <summary>The day by the server's clock.</summary>
    public DateOnly Today { get; private set; }

    /// <summary>Both without their rows.</summary>
    public GiftYears Years => new([.. Occasions.Select(row => row.Occasion)], [.. Given.Select(row => row.Given)]);

    /// <summary>Occasions with the dates they stand on, the next first.</summary>
    public IEnumerable<(OccasionRow Row, DateOnly Date)> InOrder => Occasions.Select(row => (row, row.Occasion.StandsOn(Today))).OrderBy(o => o.Item2).ThenBy(o => o.row.Id);

    /// <summary>Everybody who was given something or has a gift on the list, each once.</summary>
    public IEnumerable<string> People => Given.Select(row => row.Given.Recipient).Concat(workshop.Gifts.Select(row => row.Gift.Recipient)).Where(name => name.Length > 0).Distinct(StringComparer.OrdinalIgnoreCase);

    /// <summary>Reads both, each time anew: another device may have changed them.</summary>
    public async Task<ApiProblem?> LoadAsync()
    {
        var answer = await server.GetAsync<YearsView>(ApiRoutes.Years);
        if (answer is Answer<YearsView>.Given { Value: var view })
        {
            (Occasions, Given, Today, IsLoaded) = (view.Occasions, view.Given, view.Today, true);
            Changed?.Invoke();
        }

        return answer.Problem;
    }

    /// <summary>Adds an occasion, or changes the one of a row; under a new name its gifts go with it.</summary>
    public async Task<Answer<OccasionRow>> SaveAsync(OccasionRow? row, Occasion occasion) => await AfterAsync(
        row is null ? await server.PostAsync<OccasionRow>(ApiRoutes.Occasions, occasion) : await server.PutAsync<OccasionRow>(ApiRoutes.Occasion(row.Id), occasion),
        gifts: row is not null);

    /// <summary>Removes an occasion that no gift is for.</summary>
    public async Task<Answer<bool>> RemoveOccasionAsync(long id) => await AfterAsync(await server.DeleteAsync(ApiRoutes.Occasion(id)));

    /// <summary>Brings a removed occasion back.</summary>
    public async Task<Answer<OccasionRow>> RestoreOccasionAsync(long id) => await AfterAsync(await server.PostAsync<OccasionRow>(ApiRoutes.OccasionRestore(id)));

    /// <summary>Says that the gifts of an occasion are given.</summary>
    public async Task<Answer<GiftsGiven>> GiveAsync(long id, GiveGifts asked) => await AfterAsync(await server.PostAsync<GiftsGiven>(ApiRoutes.OccasionGiven(id), asked), gifts: true);

    /// <summary>Takes that back.</summary>
    public async Task<Answer<bool>> TakeBackAsync(long id, GiftsGiven done) => await AfterAsync(await server.PostAsync<bool>(ApiRoutes.OccasionTakeBack(id), done), gifts: true);

    /// <summary>Adds what somebody was given, or corrects a row.</summary>
    public async Task<Answer<GivenRow>> SaveAsync(GivenRow? row, GivenGift given) => await AfterAsync(
        row is null ? await server.PostAsync<GivenRow>(ApiRoutes.Given, given) : await server.PutAsync<GivenRow>(ApiRoutes.GivenGift(row.Id), given));

    /// <summary>Removes a row of what was given.</summary>
    public async Task<Answer<bool>> RemoveGivenAsync(long id) => await AfterAsync(await server.DeleteAsync(ApiRoutes.GivenGift(id)));

    /// <summary>Brings a removed row back.</summary>
    public async Task<Answer<GivenRow>> RestoreGivenAsync(long id) => await AfterAsync(await server.PostAsync<GivenRow>(ApiRoutes.GivenRestore(id)));

    private async Task<Answer<T>> AfterAsync<T>(Answer<T> answer, bool gifts = false)
    {
        if (answer is not Answer<T>.Given) return answer;
        await LoadAsync();
        if (gifts) await workshop.LoadAsync(again: true);

        // The figures follow in their own time: what was done, and its undo, must not wait for them.
        else _ = workshop.RefreshSummaryAsync();
        return answer;
    }
}
