using Scrapwright.Core.Measures;

namespace Scrapwright.Planning.Problems;

/// <summary>A stretch of an offcut without defects.</summary>
/// <param name="From">Where it begins, from the marked end.</param>
/// <param name="To">Where it ends.</param>
internal sealed record ClearRun(Length From, Length To)
{
    internal Length Length => To - From;
}
