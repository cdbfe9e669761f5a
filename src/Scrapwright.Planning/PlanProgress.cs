using System.Collections.Immutable;
using Scrapwright.Core.Plans;

namespace Scrapwright.Planning;

/// <summary>Where a search stands.</summary>
/// <param name="Phase">What it is at, in words: the level being improved.</param>
/// <param name="Elapsed">Time since the start.</param>
/// <param name="Levels">Levels known so far, with bounds.</param>
/// <param name="Best">The best audited plan so far when it is new in this report; null otherwise.</param>
public sealed record PlanProgress(string Phase, TimeSpan Elapsed, ImmutableArray<Level> Levels, Plan? Best);
