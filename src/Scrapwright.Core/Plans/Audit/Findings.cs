using System.Collections.Immutable;
using System.Globalization;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>Gathers what does not hold.</summary>
internal sealed class Findings
{
    private readonly ImmutableArray<AuditFinding>.Builder all = ImmutableArray.CreateBuilder<AuditFinding>();

    /// <summary>True when nothing was found so far.</summary>
    public bool AreNone => all.Count == 0;

    /// <summary>Everything found so far.</summary>
    public ImmutableArray<AuditFinding> ToArray() => all.ToImmutable();

    /// <summary>Adds one.</summary>
    public void Add(string where, object? found, object? expected) =>
        all.Add(new AuditFinding(where, Text(found), Text(expected)));

    /// <summary>Adds one unless both are equal; true when they are.</summary>
    public bool Equal<T>(string where, T found, T expected)
    {
        if (EqualityComparer<T>.Default.Equals(found, expected))
        {
            return true;
        }

        Add(where, found, expected);
        return false;
    }

    /// <summary>Adds one unless both hold equal items in the same order; true when they do.</summary>
    public bool Same<T>(string where, IEnumerable<T> found, IEnumerable<T> expected)
    {
        T[] left = [.. found], right = [.. expected];
        if (left.SequenceEqual(right))
        {
            return true;
        }

        Add(where, List(left), List(right));
        return false;
    }

    /// <summary>Adds one when the condition does not hold; returns the condition.</summary>
    public bool Require(bool holds, string where, object? found, object? expected)
    {
        if (!holds)
        {
            Add(where, found, expected);
        }

        return holds;
    }

    private static string List<T>(T[] items) => items.Length == 0 ? "none" : string.Join(", ", items.Select(i => Text(i)));

    private static string Text(object? value) => value switch
    {
        null => "nothing",
        "" => "nothing",
        IFormattable formattable => formattable.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString() ?? "nothing",
    };
}
