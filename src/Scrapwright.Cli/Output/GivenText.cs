using System.Collections.Immutable;
using System.Globalization;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;

namespace Scrapwright.Cli.Output;

/// <summary>Occasions, and who got what, in plain lines.</summary>
internal static class GivenText
{
    /// <summary>What was given, the latest year first.</summary>
    /// <param name="folder">The workshop.</param>
    /// <param name="to">Only what this recipient got; null for all.</param>
    internal static IEnumerable<string> Lines(ReadFolder folder, string? to)
    {
        var given = to is null ? folder.Years.Given : folder.Years.GivenTo(to);
        var whose = to is null ? "" : $" to {to.Trim()}";
        yield return $"{folder.Listed.Workshop}: {PlanText.Count(given.Length, "gift")} given{whose}.";
        foreach (var year in given.GroupBy(gift => gift.Date.Year).OrderByDescending(group => group.Key))
        {
            yield return $"{year.Key}:";
            foreach (var gift in year.OrderByDescending(g => g.Date).ThenBy(g => g.Recipient, StringComparer.OrdinalIgnoreCase)) yield return $"  {Of(gift, folder.Listed.Designs)}";
        }
    }

    /// <summary>One gift that was given.</summary>
    internal static string Of(GivenGift gift, ImmutableArray<Design> designs)
    {
        var title = DesignCatalogue.With(designs).FirstOrDefault(design => GiftYears.IsSame(design.Key, gift.Design))?.Title.ToLowerInvariant() ?? gift.Design;
        var options = gift.Options.IsEmpty ? "" : $" ({GiftOptionText.Write(gift.Options)})";
        var occasion = gift.Occasion.Length == 0 ? "" : $", {gift.Occasion}";
        return $"{gift.Date.ToString("d MMMM", CultureInfo.InvariantCulture)}{occasion}: {gift.Recipient}: {title}{options}";
    }

    /// <summary>The occasions in the order of their dates, with how many gifts are on the list for each, and what to do about one that is over.</summary>
    internal static IEnumerable<string> Occasions(ReadFolder folder)
    {
        if (folder.Years.Occasions.IsEmpty) yield break;
        yield return "Occasions:";
        foreach (var (occasion, date) in folder.Years.Occasions.Select(o => (Occasion: o, Date: o.StandsOn(folder.Today))).OrderBy(o => o.Date))
        {
            var gifts = folder.Listed.Gifts.Count(gift => GiftYears.IsSame(gift.Occasion, occasion.Name));
            var repeats = RepetitionWords.Write(occasion.Repeats) is { Length: > 0 } words ? $", {words}" : "";
            yield return $"  {date.ToString("d MMMM yyyy", CultureInfo.InvariantCulture)}: {occasion.Name}{repeats}: {PlanText.Count(gifts, "gift")}";
            if (date < folder.Today && gifts > 0) yield return $"    It is over. Are its gifts given? scrapwright given FOLDER --occasion \"{occasion.Name}\"";
        }
    }

    /// <summary>Gifts whose recipients have had their design before.</summary>
    internal static IEnumerable<string> HadBefore(ReadFolder folder)
    {
        var all = DesignCatalogue.With(folder.Listed.Designs);
        var doubts = Core.Gifts.HadBefore.Of(folder.Listed.Gifts, folder.Years, folder.Listed.Designs);
        if (!doubts.IsEmpty) yield return "Had before:";
        foreach (var had in doubts) yield return $"  {had.Gift}: {had.Words(all)}{(had.ElseWords() is { Length: > 0 } other ? $" {other}" : "")}";
    }
}
