using System.Collections.Immutable;
using Scrapwright.Client.Api;
using Scrapwright.Client.Shell;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Shops;

namespace Scrapwright.Client.Calendar;

/// <summary>How long work took, as last heard from the server; the calendar adds to it, the shop page shows it.</summary>
public sealed class TimeBoard(Server server, Undoing undoing)
{
    private Task? reading;

    /// <summary>Told when anything here changes.</summary>
    public event Action? Changed;

    /// <summary>The readings in the order kept; null until they have been read.</summary>
    public ImmutableArray<TimeRow>? Rows { get; private set; }

    /// <summary>True when the last try to read them failed.</summary>
    public bool CannotRead { get; private set; }

    /// <summary>The paces they come to.</summary>
    public ShopPaces Paces => ShopPaces.Of((Rows ?? []).Select(r => r.Reading));

    /// <summary>Reads them, unless they have been read already.</summary>
    /// <param name="again">Read them in any case.</param>
    public Task LoadAsync(bool again = false)
    {
        if (Rows is not null && !again) return Task.CompletedTask;
        return reading ??= ReadAsync();
    }

    /// <summary>What a line of the calendar took, when that was entered since a day; null when it was not.</summary>
    /// <param name="line">The line.</param>
    /// <param name="since">The day.</param>
    public TimeRow? Find(WorkLine line, DateOnly since)
    {
        ArgumentNullException.ThrowIfNull(line);
        return (Rows ?? []).LastOrDefault(r => r.Reading.Note == line.Title && r.Reading.Operation == line.Tasks[0].Task.Operation && r.Reading.Date >= since);
    }

    /// <summary>Keeps what a line took.</summary>
    /// <param name="line">The line, with at least one task.</param>
    /// <param name="date">The day.</param>
    /// <param name="tookMinutes">What it took. [min], at least 1</param>
    /// <returns>Why not; null when it is kept.</returns>
    public Task<ApiProblem?> AddAsync(WorkLine line, DateOnly date, int tookMinutes)
    {
        ArgumentNullException.ThrowIfNull(line);
        var first = line.Tasks[0].Task;
        // Tasks of one line are timed together: split in proportion they would say the same thing several times.
        return AddAsync(new TimeReading(date, first.Operation, line.UsualMinutes, tookMinutes) { Setting = first.PaceSetting, Note = line.Title });
    }

    /// <summary>Removes a reading; the undo bar brings it back.</summary>
    /// <param name="row">The reading.</param>
    /// <returns>Why not; null when it is gone.</returns>
    public async Task<ApiProblem?> RemoveAsync(TimeRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        var problem = await DeleteAsync(row.Id);
        if (problem is null) undoing.Remember(new Undo("Time", async () => (await AddAsync(row.Reading))?.Title ?? "", "removed"));
        return problem;
    }

    private async Task<ApiProblem?> AddAsync(TimeReading reading)
    {
        var answer = await server.PostAsync<TimeRow>(ApiRoutes.Times, reading);
        if (answer is Answer<TimeRow>.Given given) Take((Rows ?? []).Add(given.Value));
        return answer.Problem;
    }

    private async Task<ApiProblem?> DeleteAsync(long id)
    {
        var answer = await server.DeleteAsync(ApiRoutes.Time(id));
        if (answer.Problem is null) Take((Rows ?? []).RemoveAll(r => r.Id == id));
        return answer.Problem;
    }

    private async Task ReadAsync()
    {
        var answer = await server.GetAsync<ImmutableArray<TimeRow>>(ApiRoutes.Times);
        (CannotRead, reading) = (answer.Problem is not null, null);
        if (answer is Answer<ImmutableArray<TimeRow>>.Given given) Take(given.Value);
        else Changed?.Invoke();
    }

    private void Take(ImmutableArray<TimeRow> rows)
    {
        Rows = rows;
        Changed?.Invoke();
    }
}
