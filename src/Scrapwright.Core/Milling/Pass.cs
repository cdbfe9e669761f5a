using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Milling;

/// <summary>Work on faces or edges whose taking is known only once it is done. All that is cut from the piece afterwards shares what the pass took.</summary>
/// <param name="Key">Names the pass: strips with the same key share it.</param>
/// <param name="Spread">One standard deviation of what it takes; zero when there was no such work.</param>
public sealed record Pass(string Key, Length Spread);
