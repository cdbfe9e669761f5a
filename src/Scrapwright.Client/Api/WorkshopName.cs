namespace Scrapwright.Client.Api;

/// <summary>What the workshop is called on every sheet.</summary>
/// <param name="Name">At most 60 characters; may be empty.</param>
public sealed record WorkshopName(string Name);
