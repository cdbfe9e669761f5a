using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Client.Shops;

/// <summary>One size among the shop's settings.</summary>
/// <param name="Key">Name in the page.</param>
/// <param name="Title">Name on the screen.</param>
/// <param name="Hint">One line that helps.</param>
/// <param name="Get">Reads it.</param>
/// <param name="Set">The shop with it changed.</param>
/// <param name="MayBeZero">Whether zero is a sensible value.</param>
public sealed record LengthSetting(string Key, string Title, string Hint, Func<Shop, Length> Get, Func<Shop, Length, Shop> Set, bool MayBeZero = false);
