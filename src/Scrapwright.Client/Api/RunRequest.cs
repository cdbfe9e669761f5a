namespace Scrapwright.Client.Api;

/// <summary>How long to search for a plan.</summary>
/// <param name="Seconds">Longest search; 1 to 3600. [s]</param>
/// <param name="Seed">Seed of the search; 0 or more.</param>
/// <param name="Near">Begin from the latest plan, if there is one, and change no more than is better for it.</param>
public sealed record RunRequest(double Seconds = 10, int Seed = 1, bool Near = true);
