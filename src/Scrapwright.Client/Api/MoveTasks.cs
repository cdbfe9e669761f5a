using System.Collections.Immutable;

namespace Scrapwright.Client.Api;

/// <summary>Tasks of the latest calendar that the maker wants one after the other from a moment on.</summary>
/// <param name="Tasks">Ids of the tasks, in order.</param>
/// <param name="Start">When the first of them starts.</param>
public sealed record MoveTasks(ImmutableArray<string> Tasks, DateTimeOffset Start);
