using System.Collections.Immutable;

namespace Scrapwright.Client.Api;

/// <summary>The occasions and what was given.</summary>
/// <param name="Occasions">The occasions, in the order they were added.</param>
/// <param name="Given">What was given, in the order it was added.</param>
/// <param name="Today">The day by the server's clock: dates of occasions count from it.</param>
public sealed record YearsView(ImmutableArray<OccasionRow> Occasions, ImmutableArray<GivenRow> Given, DateOnly Today);
