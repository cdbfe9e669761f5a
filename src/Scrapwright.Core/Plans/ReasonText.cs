using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans.Choices;

namespace Scrapwright.Core.Plans;

/// <summary>Reasons in words a maker reads: the same on screens, on paper and in the terminal.</summary>
public static class ReasonText
{
    /// <summary>One line, without a full stop: <c>one more strip of light wood ≥ 1 1/4 in wide, ≥ 13 in long, ≥ 7/8 in thick (square)</c>.</summary>
    /// <param name="reason">The reason.</param>
    /// <param name="style">How lengths are shown. Least sizes are rounded up to its marks: a strip as short as the rounded-down number would not do.</param>
    /// <param name="partTitle">What a part is called, by its key; null for the key.</param>
    /// <param name="blank">What stands within a size; a no-break space keeps it on one line.</param>
    /// <exception cref="ArgumentOutOfRangeException">A reason of another kind.</exception>
    public static string Write(Reason reason, LengthStyle style, Func<string, string>? partTitle = null, char blank = ' ')
    {
        ArgumentNullException.ThrowIfNull(style);
        string Part(string key) => partTitle is null ? key : partTitle(key);
        string Text(Length length, Rounding rounding) => LengthFormatter.Format(length, style with { Rounding = rounding, Approximate = false }).Replace(' ', blank);
        string Least(Length length) => Text(length, Rounding.Up);
        string Sizes(Length width, Length length, Length thickness) => $"≥{blank}{Least(width)} wide, ≥{blank}{Least(length)} long, ≥{blank}{Least(thickness)} thick";
        string Pinned(Reason.Pinned p) => Of(p, style, blank);
        return reason switch
        {
            Reason.MissingStrips s =>
                $"{Number(s.Strips)} more {(s.Strips == 1 ? "strip" : "strips")} of {Wood(s.Tone)} {Sizes(s.Width, s.Length, s.Thickness)} ({Part(s.Part)})",
            Reason.MissingBoard b => $"a board {Sizes(b.Width, b.Length, b.Thickness)} (run {b.Run})",
            Reason.WrongOption o => $"{o.Option}: found {(o.Found.Length == 0 ? "nothing" : $"“{o.Found}”")}, expected {o.Expected}",
            // Rounded away from each other, so that the two never read alike.
            Reason.BeyondShop b when b.Needed < b.Allowed => $"{Part(b.Part)}: {b.Limit} is {Least(b.Allowed)}, needed {Text(b.Needed, Rounding.Down)}",
            Reason.BeyondShop b => $"{Part(b.Part)}: {b.Limit} is {Text(b.Allowed, Rounding.Down)}, needed {Least(b.Needed)}",
            Reason.Pinned p => $"{p.Offcut} is pinned to it ({Part(p.Part)}) but {Pinned(p)}: unpin it, or pin another",
            Reason.OutOfTime => "the search ended before it could tell, as the wood left over would do for this gift alone: give it more seconds",
            _ => throw new ArgumentOutOfRangeException(nameof(reason), reason, "A reason."),
        };
    }

    /// <summary>What is wrong with an offcut for a part, after its label: <c>is too thin: 1/4 in once milled, needed 7/16 in</c>.</summary>
    /// <param name="pinned">The reason.</param>
    /// <param name="style">How lengths are shown; rounded away from each other.</param>
    /// <param name="blank">What stands within a size.</param>
    /// <exception cref="ArgumentOutOfRangeException">A fault of another kind.</exception>
    public static string Of(Reason.Pinned pinned, LengthStyle style, char blank = ' ')
    {
        ArgumentNullException.ThrowIfNull(pinned);
        ArgumentNullException.ThrowIfNull(style);
        string Text(Length length, Rounding rounding) => LengthFormatter.Format(length, style with { Rounding = rounding, Approximate = false }).Replace(' ', blank);
        return pinned.Fault switch
        {
            PinFault.NotInPile => "is not in the pile",
            PinFault.KeptForLater => "is kept for later",
            PinFault.TooShort => $"is too short: {Text(pinned.Has, Rounding.Down)}, needed {Text(pinned.Needed, Rounding.Up)}",
            PinFault.TooNarrow => $"is too narrow: {Text(pinned.Has, Rounding.Down)} once its edges are straight, needed {Text(pinned.Needed, Rounding.Up)}",
            PinFault.TooThin => $"is too thin: {Text(pinned.Has, Rounding.Down)} once milled, needed {Text(pinned.Needed, Rounding.Up)}",
            PinFault.NoWayFound => "no way was found beside the other strips and gifts",
            _ => throw new ArgumentOutOfRangeException(nameof(pinned), pinned.Fault, "A fault of a pin."),
        };
    }

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
