using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Designs;

/// <summary>One named size of a joint.</summary>
/// <param name="Name">What it is, in trade words.</param>
/// <param name="Size">The size.</param>
public sealed record JointSize(string Name, Length Size);
