using System.Collections.Immutable;

namespace Scrapwright.Core.Designs;

/// <summary>
/// Solid parts cut one after the other along a single board so that the grain runs on from one to the next.
/// All have the same width and thickness. A solid part without a grain match is a run of its own.
/// </summary>
/// <param name="Mark">Letter of the run.</param>
/// <param name="Members">The parts in their order along the board, from its marked end.</param>
public sealed record GrainRun(string Mark, ImmutableArray<PartRef> Members);
