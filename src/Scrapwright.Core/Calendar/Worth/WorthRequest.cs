using System.Collections.Immutable;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Calendar.Worth;

/// <summary>All the facts that making is weighed against buying from.</summary>
public sealed record WorthRequest
{
    /// <summary>The plan.</summary>
    public required Plan Plan { get; init; }

    /// <summary>What an hour is worth to the maker; null when nobody said: then only minutes are compared.</summary>
    public HourWorth? HourWorth { get; init; }

    /// <summary>What can be bought.</summary>
    public ImmutableArray<Price> Prices { get; init; } = [];

    /// <summary>The maker's own jigs, in place of those of the table with the same key.</summary>
    public ImmutableArray<Jig> Jigs { get; init; } = [];

    /// <summary>How long work took so far.</summary>
    public ImmutableArray<TimeReading> Times { get; init; } = [];

    /// <summary>Ids of tasks that are done; what had to be done before them is done too.</summary>
    public ImmutableArray<string> Done { get; init; } = [];

    /// <summary>The same facts as those of a calendar.</summary>
    /// <param name="request">What the calendar is made from.</param>
    public static WorthRequest Of(CalendarRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return new()
        {
            Plan = request.Plan,
            HourWorth = request.HourWorth,
            Prices = request.Prices,
            Jigs = request.Jigs,
            Times = request.Times,
            Done = [.. request.Done.Select(d => d.Task)],
        };
    }
}
