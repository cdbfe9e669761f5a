using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Pile;

/// <summary>
/// One offcut as a maker mutters it while sorting: <c>walnut 14 3/8 x 2 1/8 x 7/8 x3, cupped 1/16, knot 4-5</c>.
/// Species and sizes come in any order; sizes are length x width x thickness, or the other way round when that is plain; a note follows a semicolon.
/// </summary>
public static class EntryLine
{
    /// <summary>Longest line that is read, in characters.</summary>
    public const int LongestLine = 500;

    /// <summary>Reads one line. Never throws on what a person wrote.</summary>
    /// <param name="line">The line, without its end.</param>
    /// <param name="bareUnit">Unit of numbers without one; a bare fraction is in inches all the same.</param>
    public static EntryOutcome Parse(string line, LengthUnit bareUnit)
    {
        ArgumentNullException.ThrowIfNull(line);
        return new EntryReader(line, bareUnit).Read();
    }

    /// <summary>
    /// Writes a line that is read back to the same offcut, exactly. A note keeps its words but not line ends or blanks around it;
    /// a defect must lie on the offcut.
    /// </summary>
    /// <param name="offcut">The offcut; an empty label is left out.</param>
    /// <param name="unit">Unit of every size written.</param>
    public static string Write(Offcut offcut, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(offcut);
        return EntryWriter.Write(offcut, unit);
    }
}
