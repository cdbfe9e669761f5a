using Scrapwright.Core.Measures;
using Scrapwright.Planning.Search;

namespace Scrapwright.Planning.Building;

/// <summary>One output of a crosscut along a lane.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Length">Its length.</param>
/// <param name="Segment">What it is used for; null for a leftover.</param>
/// <param name="IsDefect">True when it holds a defect.</param>
internal sealed record LengthOutput(string Id, Length Length, Segment? Segment, bool IsDefect);
