using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Shops;

/// <summary>Clamps of one kind on the rack.</summary>
/// <param name="Name">What the maker calls them.</param>
/// <param name="Reach">Widest glue-up they close.</param>
/// <param name="Count">How many there are.</param>
/// <param name="ForceNewtons">How hard one presses when tightened well by hand. [N], above zero. The default is an estimate for a bar clamp; its maker's figure comes first.</param>
public sealed record ClampKind(string Name, Length Reach, int Count, int ForceNewtons = 4000);
