namespace Scrapwright.Client.Api;

/// <summary>Asks for a calendar of the latest plan.</summary>
/// <param name="Seconds">Longest search. [s], above 0, at most 60</param>
/// <param name="Start">From when on there is time; null for now.</param>
/// <param name="FirstDay">The first day there is time on, by the clock of the shop; instead of <paramref name="Start"/>, null for none.</param>
public sealed record MakeCalendar(double Seconds, DateTimeOffset? Start = null, DateOnly? FirstDay = null)
{
    /// <summary>Longest search that can be asked for. [s]</summary>
    public const double MostSeconds = 60;
}
