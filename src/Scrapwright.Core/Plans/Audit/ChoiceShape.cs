using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans.Choices;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>Whether the maker's choices have everything that must be there, with sizes that a workshop can have.</summary>
internal sealed class ChoiceShape(Findings findings)
{
    private static readonly Length Longest = Length.FromMillimetres(100_000);

    /// <summary>Looks at the choices and at the strips of the plan before.</summary>
    public void Check(Plan plan)
    {
        if (!Each("before", plan.Before, (at, s) => Texts(at, s.Gift, s.Part, s.Offcut) && Within(at, s.RoughWidth)
            && findings.Require(s.Count is >= 1 and <= 100_000, at + " count", s.Count, "1 to 100000")))
        {
            return;
        }

        if (!findings.Require(plan.Request.Choices is not null, "request.choices", "nothing", "a value")) return;
        var choices = plan.Request.Choices!;
        Each("request.choices.saved", choices.Saved, (at, s) => Texts(at, s));
        Each("request.choices.pins", choices.Pins, (at, p) => Texts(at, p.Offcut, p.Gift, p.Part));
        Each("request.choices.orders", choices.Orders, (at, o) => Texts(at, o.Gift, o.Part)
            && Each(at + ".strips", o.Strips, (p, s) => Texts(p, s.Offcut) && Within(p, s.RoughWidth)));
        Each("request.choices.glued", choices.Glued, (at, g) => Texts(at, g.Id, g.Gift, g.Part)
            && Each(at + ".also", g.Also, (s, share) => Texts(s, share.Gift, share.Part))
            && Each(at + ".strips", g.Strips, (p, s) => Texts(p, s.Piece, s.Offcut) && Within(p, s.RoughWidth, s.Width, s.Length, s.Thickness)));
        Each("request.choices.cut", choices.Cut, (at, b) => Texts(at, b.Gift, b.Run, b.Piece, b.Offcut) && Within(at, b.RoughWidth, b.Width, b.Length, b.Thickness));
        Each("request.choices.milledStrips", choices.MilledStrips, (at, m) => Texts(at, m.Gift, m.Part) && findings.Require(m.Strip is not null, at + ".strip", "nothing", "a value")
            && Texts(at, m.Strip!.Piece, m.Strip.Offcut) && Within(at, m.Strip.RoughWidth, m.Strip.Width, m.Strip.Length, m.Strip.Thickness));
        Each("request.choices.milled", choices.Milled, (at, m) => Texts(at, m.Offcut)
            && Each(at + ".lanes", m.Lanes, (p, l) => Within(p, l.RoughWidth)
                && Each(p + ".pieces", l.Pieces, (q, piece) => Texts(q, piece.Piece) && Within(q, piece.Length))));
    }

    private bool Each<T>(string at, ImmutableArray<T> items, Func<string, T, bool> check)
    {
        if (!findings.Require(!items.IsDefault, at, "nothing", "a list")) return false;
        var holds = findings.Require(items.Length <= 100_000, at, items.Length, "at most 100000");
        for (var i = 0; i < items.Length && holds; i++)
        {
            holds = findings.Require(items[i] is not null, $"{at}[{i}]", "nothing", "a value") && check($"{at}[{i}]", items[i]);
        }

        return holds;
    }

    private bool Texts(string at, params ReadOnlySpan<string> texts)
    {
        var holds = true;
        foreach (var text in texts) holds &= findings.Require(text is not null, at, "nothing", "a value");
        return holds;
    }

    private bool Within(string at, params ReadOnlySpan<Length> sizes)
    {
        var holds = true;
        foreach (var size in sizes) holds &= findings.Require(size >= Length.Zero && size <= Longest, at, size, $"0 to {Longest}");
        return holds;
    }
}
