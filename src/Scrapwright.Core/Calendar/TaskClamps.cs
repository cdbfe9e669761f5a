using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Calendar;

/// <summary>Clamps of a task.</summary>
/// <param name="Reach">What they have to reach across.</param>
/// <param name="Count">How many; above zero.</param>
/// <param name="HeldMinutes">How long they stay on after the hands are off. [min], from zero</param>
public sealed record TaskClamps(Length Reach, int Count, int HeldMinutes);
