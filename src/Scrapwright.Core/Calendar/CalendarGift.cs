namespace Scrapwright.Core.Calendar;

/// <summary>A gift in a calendar.</summary>
/// <param name="Gift">Label of the gift.</param>
/// <param name="Due">The day it is due; null for no date.</param>
/// <param name="DueAt">The moment at which that day begins by the shop's clock; null for no date.</param>
/// <param name="ReadyAt">When it is ready, dried and all; null when it was ready before the start.</param>
/// <param name="SlackDays">Whole days from then until it is due, rounded down; below zero when it is late, null without a date or when it was ready before the start. [d]</param>
public sealed record CalendarGift(string Gift, DateOnly? Due, DateTimeOffset? DueAt, DateTimeOffset? ReadyAt, int? SlackDays)
{
    /// <summary>True when it is ready only after its day has begun.</summary>
    public bool IsLate => ReadyAt > DueAt;
}
