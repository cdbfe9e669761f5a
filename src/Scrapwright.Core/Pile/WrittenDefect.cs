using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Pile;

/// <summary>A defect as written, before the length of the offcut is known.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Place">How the sizes are meant.</param>
/// <param name="From">First size; the only one unless a stretch.</param>
/// <param name="To">Second size of a stretch.</param>
/// <param name="Start">Where it stands in the line, from 0.</param>
/// <param name="End">Where it ends.</param>
internal readonly record struct WrittenDefect(DefectKind Kind, WrittenDefect.Places Place, WrittenSize From, WrittenSize To, int Start, int End)
{
    /// <summary>How the sizes across the width are meant; <see cref="Places.All"/> when there are none.</summary>
    public Places AcrossPlace { get; init; }

    /// <summary>First size across the width.</summary>
    public WrittenSize AcrossFrom { get; init; }

    /// <summary>Second size across the width.</summary>
    public WrittenSize AcrossTo { get; init; }

    /// <summary>Whether it may stay.</summary>
    public bool IsKept { get; init; }

    internal enum Places
    {
        /// <summary>From one end or edge to the other.</summary>
        All,

        /// <summary>At one place: half an inch to each side.</summary>
        At,

        /// <summary>From one size to another.</summary>
        Stretch,

        /// <summary>From the marked end.</summary>
        First,

        /// <summary>Up to the other end.</summary>
        Last,
    }

    /// <summary>The stretch on an offcut of that length, which may lie beyond it.</summary>
    internal (Length From, Length To) On(Length length) => Stretch(Place, From.Value, To.Value, length);

    /// <summary>The stretch across an offcut of that width, which may lie beyond it; null when it takes all of it.</summary>
    internal (Length From, Length To)? AcrossOn(Length width) =>
        AcrossPlace == Places.All ? null : Stretch(AcrossPlace, AcrossFrom.Value, AcrossTo.Value, width);

    private static (Length From, Length To) Stretch(Places place, Length from, Length to, Length whole)
    {
        var half = Length.FromInches(1, 2);
        return place switch
        {
            Places.All => (Length.Zero, whole),
            Places.Stretch => (Length.Min(from, to), Length.Max(from, to)),
            Places.First => (Length.Zero, from),
            Places.Last => (whole - from, whole),
            _ => from > whole ? (from, from) : (Length.Max(Length.Zero, from - half), Length.Min(whole, from + half)),
        };
    }
}
