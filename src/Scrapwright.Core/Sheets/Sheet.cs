using System.Collections.Immutable;

namespace Scrapwright.Core.Sheets;

/// <summary>One printed page.</summary>
/// <param name="Paper">The paper.</param>
/// <param name="Title">What stands at its head.</param>
/// <param name="Summary">What it shows, in a sentence, for those who cannot see it.</param>
/// <param name="Marks">Everything on it, drawn in order.</param>
public sealed record Sheet(PaperSize Paper, string Title, string Summary, ImmutableArray<Mark> Marks)
{
    /// <summary>Every mark on it, out of its groups.</summary>
    public IEnumerable<Mark> AllMarks => Flat(Marks);

    internal static IEnumerable<Mark> Flat(IEnumerable<Mark> marks) =>
        marks.SelectMany(m => m is Mark.Group group ? Flat(group.Marks) : [m]);
}
