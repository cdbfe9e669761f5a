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
    internal enum Places
    {
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
    internal (Length From, Length To) On(Length length)
    {
        var half = Length.FromInches(1, 2);
        return Place switch
        {
            Places.Stretch => (Length.Min(From.Value, To.Value), Length.Max(From.Value, To.Value)),
            Places.First => (Length.Zero, From.Value),
            Places.Last => (length - From.Value, length),
            _ => From.Value > length
                ? (From.Value, From.Value)
                : (Length.Max(Length.Zero, From.Value - half), Length.Min(length, From.Value + half)),
        };
    }
}
