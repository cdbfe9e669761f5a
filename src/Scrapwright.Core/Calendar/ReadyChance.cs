using System.Text.Json.Serialization;

namespace Scrapwright.Core.Calendar;

/// <summary>How likely a gift is ready by its day when tasks take shorter or longer than planned.</summary>
public sealed record ReadyChance
{
    /// <summary>Label of the gift; empty for all gifts together.</summary>
    public required string Gift { get; init; }

    /// <summary>The day it is due, of all together the last one; null for no date.</summary>
    public DateOnly? Due { get; init; }

    /// <summary>Of a thousand times, how often it is ready when its day begins; of all together, how often every gift is. [‰], 0 to 1000, rounded down; null without a date</summary>
    public int? PerMille { get; init; }

    /// <summary>The first day at whose beginning it is ready as often as asked for; null when no day within the horizon is one.</summary>
    public DateOnly? ReadyBy { get; init; }

    /// <summary>Begin of the last window in which its first task can start so that it is still in time, all tasks taking what is planned; null without a date or when none does.</summary>
    public DateTimeOffset? StartBy { get; init; }

    /// <summary>The same so that it is in time as often as asked for; null without a date or when none does.</summary>
    public DateTimeOffset? SafeStartBy { get; init; }

    /// <summary>How many evenings should be left between the planned end and the due day for it to be in time as often as asked for. [1], from zero; null when no number is enough within the horizon</summary>
    public int? EveningsToKeepFree { get; init; }

    /// <summary>How many evenings are left there now. [1], from zero; null without a date</summary>
    public int? EveningsLeft { get; init; }

    /// <summary>The day to start by for it to be as sure as asked for; null when no start is early enough, or when it is the day of <see cref="StartBy"/> anyway.</summary>
    [JsonIgnore]
    public DateTimeOffset? EarlierStartBy => SafeStartBy is { } safe && safe.Date != StartBy?.Date ? safe : null;

    /// <summary>Evenings to keep free, where fewer are left; null where enough are.</summary>
    [JsonIgnore]
    public int? TooFewEvenings => EveningsToKeepFree > EveningsLeft ? EveningsToKeepFree : null;
}
