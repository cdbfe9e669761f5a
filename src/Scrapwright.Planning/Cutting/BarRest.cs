namespace Scrapwright.Planning.Cutting;

/// <summary>What the bundles from one on can still add: worth at most, the last bundle taken in part and rounded up, and size.</summary>
internal sealed class BarRest
{
    private readonly long[] sizeBefore;
    private readonly long[] worthBefore;
    private readonly BarBundle[] bundles;

    internal BarRest(BarBundle[] bundles)
    {
        this.bundles = bundles;
        sizeBefore = new long[bundles.Length + 1];
        worthBefore = new long[bundles.Length + 1];
        for (var i = 0; i < bundles.Length; i++)
        {
            sizeBefore[i + 1] = sizeBefore[i] + bundles[i].Size;
            worthBefore[i + 1] = worthBefore[i] + bundles[i].Worth;
        }
    }

    /// <summary>Worth at most of the bundles from <paramref name="first"/> on in some room. Needs them by falling worth per size.</summary>
    internal long Most(int first, long room)
    {
        var end = Array.BinarySearch(sizeBefore, first, sizeBefore.Length - first, sizeBefore[first] + room);
        if (end < 0) end = ~end - 1;
        var worth = worthBefore[end] - worthBefore[first];
        if (end == bundles.Length) return worth;
        var rest = room - (sizeBefore[end] - sizeBefore[first]);
        return worth + (long)((Int128)bundles[end].Worth * rest / bundles[end].Size) + 1;
    }

    /// <summary>Size of all bundles from <paramref name="first"/> on.</summary>
    internal long Size(int first) => sizeBefore[^1] - sizeBefore[first];
}
