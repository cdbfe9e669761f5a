using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Plans;

/// <summary>Reasons in words a maker reads.</summary>
public static class ReasonText
{
    /// <summary>One line, without a full stop: <c>one more strip of light wood ≥ 1 1/4 in wide, ≥ 13 in long, ≥ 7/8 in thick</c>.</summary>
    /// <param name="reason">The reason.</param>
    /// <param name="style">How lengths are shown. Least sizes are rounded up to its marks.</param>
    public static string Write(Reason reason, LengthStyle style)
    {
        ArgumentNullException.ThrowIfNull(style);
        return reason switch
        {
            Reason.MissingStrips s =>
                $"{Number(s.Strips)} more {(s.Strips == 1 ? "strip" : "strips")} of {Wood(s.Tone)} {Sizes(s.Width, s.Length, s.Thickness, style)} ({s.Part})",
            Reason.MissingBoard b => $"a board {Sizes(b.Width, b.Length, b.Thickness, style)} (run {b.Run})",
            Reason.WrongOption o => $"{o.Option}: found {(o.Found.Length == 0 ? "nothing" : o.Found)}, expected {o.Expected}",
            Reason.BeyondShop b => $"{b.Part}: {b.Limit} is {Text(b.Allowed, style)}, needed {Text(b.Needed, style)}",
            Reason.OutOfTime => "the search ended before it could tell: the wood left over would do for this gift taken alone",
            _ => throw new ArgumentOutOfRangeException(nameof(reason), reason, "A reason."),
        };
    }

    private static string Sizes(Length width, Length length, Length thickness, LengthStyle style)
    {
        var up = style with { Rounding = Rounding.Up, Approximate = false };
        return $"≥ {Text(width, up)} wide, ≥ {Text(length, up)} long, ≥ {Text(thickness, up)} thick";
    }

    private static string Text(Length length, LengthStyle style) => LengthFormatter.Format(length, style);

    private static string Wood(Tone tone) => tone switch
    {
        Tone.Light => "light wood",
        Tone.Middling => "middling wood",
        Tone.Dark => "dark wood",
        _ => "any wood",
    };

    private static string Number(int count) => count switch
    {
        1 => "one",
        2 => "two",
        3 => "three",
        4 => "four",
        5 => "five",
        6 => "six",
        _ => $"{count}",
    };
}
