namespace Scrapwright.Planning.Tests.Cutting;

/// <summary>Tries every guillotine layout of a tiny board: which sets of parts a rectangle can give, cut at every whole place.</summary>
internal sealed class EveryLayout
{
    private readonly (int Length, int Width, int Value)[] singles;
    private readonly int kerf;
    private readonly bool mayTurn;
    private readonly Dictionary<(int, int), HashSet<int>> known = [];

    internal EveryLayout((int Length, int Width, int Count, int Value)[] parts, int kerf, bool mayTurn)
    {
        singles = [.. parts.SelectMany(p => Enumerable.Repeat((p.Length, p.Width, p.Value), p.Count))];
        (this.kerf, this.mayTurn) = (kerf, mayTurn);
    }

    internal long Most(int length, int width) => Sets(length, width).Max(set => singles.Where((_, i) => (set >> i & 1) != 0).Sum(s => (long)s.Value));

    private HashSet<int> Sets(int length, int width)
    {
        if (length <= 0 || width <= 0) return [0];
        if (known.TryGetValue((length, width), out var sets)) return sets;
        sets = [0];
        for (var i = 0; i < singles.Length; i++)
        {
            var (l, w, _) = singles[i];
            if ((l <= length && w <= width) || (mayTurn && w <= length && l <= width)) sets.Add(1 << i);
        }

        for (var at = 1; at < length; at++) Join(sets, Sets(at, width), Sets(length - at - kerf, width));
        for (var at = 1; at < width; at++) Join(sets, Sets(length, at), Sets(length, width - at - kerf));
        return known[(length, width)] = sets;
    }

    private static void Join(HashSet<int> sets, HashSet<int> first, HashSet<int> second)
    {
        foreach (var a in first)
        {
            foreach (var b in second)
            {
                if ((a & b) == 0) sets.Add(a | b);
            }
        }
    }
}
