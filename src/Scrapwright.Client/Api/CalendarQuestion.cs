namespace Scrapwright.Client.Api;

/// <summary>Asks what holds the latest calendar up, and what could be done.</summary>
/// <param name="Seconds">Longest search, all that is tried together. [s], above 0, at most 300</param>
public sealed record CalendarQuestion(double Seconds)
{
    /// <summary>Longest search that can be asked for. [s]</summary>
    public const double MostSeconds = 300;
}
