using System.Collections.Frozen;
using System.Collections.Immutable;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Finishing;

/// <summary>Every grit of the two standards that the program knows. Read once, at first use; safe from any thread.</summary>
public static class GritTable
{
    /// <summary>FEPA first, each scale from coarse to fine.</summary>
    public static ImmutableArray<Grit> All => LazyRows.Value;

    /// <summary>The grit with this mark, or null.</summary>
    /// <param name="mark">As printed or written: <c>P120</c>, <c>p 120</c>, <c>120</c>, <c>120 grit</c>. A bare number is CAMI.</param>
    public static Grit? Find(string mark)
    {
        ArgumentNullException.ThrowIfNull(mark);
        // Our own choice: no mark is longer.
        Span<char> buffer = stackalloc char[8];
        var length = 0;
        var text = mark.AsSpan().Trim();
        if (text.EndsWith("grit", StringComparison.OrdinalIgnoreCase)) text = text[..^4];
        foreach (var letter in text)
        {
            if (char.IsWhiteSpace(letter)) continue;
            if (length == buffer.Length) return null;
            buffer[length++] = char.ToUpperInvariant(letter);
        }

        return LazyRows.ByMark.TryGetValue(buffer[..length], out var grit) ? grit : null;
    }

    /// <summary>The grit with exactly this mark.</summary>
    /// <exception cref="KeyNotFoundException">No grit has this mark.</exception>
    public static Grit Get(string mark) => Find(mark) ?? throw new KeyNotFoundException($"No grit is marked '{mark}'. Maybe {nameof(Find)} is meant.");

    private static Grit ToGrit(EmbeddedRow row) => new()
    {
        Scale = row.Word<GritScale>("scale"),
        Mark = row.Required("mark"),
        ParticleMicrometres = row.RequiredNumber("particle_um"),
        SecondMicrometres = row.Number("second_um"),
        Source = row.RequiredSource("particle_source"),
        SecondSource = row.Source("second_source"),
    };

    private static class LazyRows
    {
        internal static readonly ImmutableArray<Grit> Value = [.. EmbeddedTable.Read("Finishing.grits.csv").Select(ToGrit)];

        internal static readonly FrozenDictionary<string, Grit>.AlternateLookup<ReadOnlySpan<char>> ByMark =
            Value.ToFrozenDictionary(grit => grit.Mark, StringComparer.Ordinal).GetAlternateLookup<ReadOnlySpan<char>>();
    }
}
