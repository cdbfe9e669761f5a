namespace Scrapwright.Client.Api;

/// <summary>A time zone.</summary>
/// <param name="Name">Its name in the IANA database.</param>
public sealed record ZoneName(string Name);
