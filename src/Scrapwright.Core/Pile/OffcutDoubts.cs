using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Pile;

/// <summary>Finds sizes that are more likely slips than wood. The limits are common practice, no source.</summary>
public static class OffcutDoubts
{
    /// <summary>Longer is asked back: 20 ft.</summary>
    public static Length LongestUsual { get; } = Length.FromFeet(20);

    /// <summary>Wider is asked back: 36 in.</summary>
    public static Length WidestUsual { get; } = Length.FromInches(36);

    /// <summary>Thicker is asked back: 8 in.</summary>
    public static Length ThickestUsual { get; } = Length.FromInches(8);

    /// <summary>Thinner is asked back: 1/16 in.</summary>
    public static Length ThinnestUsual { get; } = Length.FromInches(1, 16);

    /// <summary>Everything to be asked back about an offcut; empty for a usual one.</summary>
    /// <param name="offcut">An offcut whose sizes are above zero.</param>
    /// <param name="unit">Unit to ask in.</param>
    public static ImmutableArray<OffcutDoubt> Of(Offcut offcut, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(offcut);
        var doubts = ImmutableArray.CreateBuilder<OffcutDoubt>();
        if (offcut.Length > LongestUsual)
            Ask(EntryPart.Length, offcut.Length, "long", $"Offcuts are mostly below {Text(LongestUsual)}.");
        if (offcut.Width > WidestUsual)
            Ask(EntryPart.Width, offcut.Width, "wide", $"Offcuts are mostly below {Text(WidestUsual)}.");
        if (offcut.Thickness > ThickestUsual)
            Ask(EntryPart.Thickness, offcut.Thickness, "thick", $"Offcuts are mostly below {Text(ThickestUsual)}.");
        if (offcut.Thickness < ThinnestUsual)
            Ask(EntryPart.Thickness, offcut.Thickness, "thick", $"Offcuts are mostly above {Text(ThinnestUsual)}.");
        if (offcut.Length < offcut.Thickness)
            Ask(EntryPart.Length, offcut.Length, "long", "That is less than it is thick; the length runs along the grain.");
        if (offcut.Cup > offcut.Thickness && offcut.Cup * 4 > offcut.Width)
            Ask(EntryPart.Cup, offcut.Cup, "of cup", "That is more than it is thick.");
        if (offcut.Bow * 4 > offcut.Length)
            Ask(EntryPart.Bow, offcut.Bow, "of bow", "That is more than a quarter of the length.");
        if (offcut.Twist > offcut.Width)
            Ask(EntryPart.Twist, offcut.Twist, "of twist", "That is more than it is wide.");
        return doubts.ToImmutable();

        string Text(Length size) => EntryMessages.Size(size, unit);

        void Ask(EntryPart part, Length size, string how, string why) =>
            doubts.Add(new(part, size, $"{Text(size)} {how}: is that right? {why}"));
    }
}
