using Scrapwright.Core.Shops;

namespace Scrapwright.Planning.Building;

/// <summary>A place in the working order: an operation, and which of several rounds of it.</summary>
/// <param name="Operation">The operation.</param>
/// <param name="Round">0 for the first; edges are jointed again after ripping, the faces of what is glued face to face apart from others, and each board is glued by itself.</param>
/// <param name="GlueUp">The glue-up, for gluing; empty otherwise.</param>
internal sealed record Stage(Operation Operation, int Round = 0, string GlueUp = "");
