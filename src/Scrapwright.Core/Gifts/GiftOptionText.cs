using System.Collections.Immutable;

namespace Scrapwright.Core.Gifts;

/// <summary>Options of a gift in one line: <c>count=4; size=4 in</c>.</summary>
public static class GiftOptionText
{
    /// <summary>The options in one line, by key.</summary>
    public static string Write(ImmutableSortedDictionary<string, string> options)
    {
        ArgumentNullException.ThrowIfNull(options);
        return string.Join("; ", options.Select(option => $"{option.Key}={option.Value}"));
    }

    /// <summary>The options of a line, keys in lower case; of a part without a key, or with one that was there before, the text is told.</summary>
    /// <param name="text">The line.</param>
    /// <param name="bare">Parts without a key.</param>
    /// <param name="doubled">Parts whose key stands there already.</param>
    public static ImmutableSortedDictionary<string, string> Read(string text, out ImmutableArray<string> bare, out ImmutableArray<string> doubled)
    {
        ArgumentNullException.ThrowIfNull(text);
        var options = ImmutableSortedDictionary.CreateBuilder<string, string>();
        var (withoutKey, again) = (ImmutableArray.CreateBuilder<string>(), ImmutableArray.CreateBuilder<string>());
        foreach (var part in text.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var equals = part.IndexOf('=', StringComparison.Ordinal);
            var key = equals > 0 ? part[..equals].Trim().ToLowerInvariant() : "";
            if (key.Length == 0) withoutKey.Add(part);
            else if (!options.TryAdd(key, part[(equals + 1)..].Trim())) again.Add(part);
        }

        (bare, doubled) = (withoutKey.ToImmutable(), again.ToImmutable());
        return options.ToImmutable();
    }
}
