using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Pile;

internal sealed partial class EntryReader
{
    private static readonly Length LeastPlausible = Length.FromMillimetres(40);
    private static readonly Length MostPlausible = Length.FromMillimetres(6000);
    private Length length, width, thickness;

    /// <summary>Decides which numbers are length, width, thickness and count.</summary>
    private void SettleSizes()
    {
        TakeOutCount();
        if (sizes.Count > 3)
        {
            Problem(sizes[3].Start, sizes[3].End, EntryMessages.NoMoreSizes);
            return;
        }

        if (sizes.Count < 3)
        {
            var start = sizes.Count > 0 ? sizes[0].Start : line.Length;
            var end = sizes.Count > 0 ? sizes[^1].End : line.Length;
            if (!problems.Exists(problem => problem.Column > start && problem.Expected != EntryMessages.ASpecies)) Problem(start, end, EntryMessages.ThreeSizes);
            return;
        }

        var zero = false;
        foreach (var size in sizes)
        {
            if (size.Value.IsPositive) continue;
            Problem(size.Start, size.End, EntryMessages.AboveZero);
            zero = true;
        }

        if (zero || problems.Exists(problem => problem.Expected == EntryMessages.AboveZero)) return;
        var shared = ShareUnit();
        var (l, w, t, guessed) = Arrange();
        if (w.Value < t.Value) (w, t, guessed) = (t, w, true);
        (length, width, thickness) = (l.Value, w.Value, t.Value);
        Reading(l.Start, l.End, EntryPart.Length, $"{SizeText(l)} long", guessed || shared);
        Reading(w.Start, w.End, EntryPart.Width, $"{SizeText(w)} wide", guessed || shared);
        Reading(t.Start, t.End, EntryPart.Thickness, $"{SizeText(t)} thick", guessed || shared);
    }

    // Four numbers: the one that stands alone is the count, else the last ("14x2x1 x3"), else the first ("3x 14 x 2 x 1").
    private void TakeOutCount()
    {
        if (sizes.Count != 4 || given.Contains(EntryPart.Count)) return;
        var index = sizes.FindIndex(size => IsAlone(size) && size.IsCount);
        var alone = index >= 0 && sizes.FindAll(IsAlone).Count == 1;
        if (!alone) index = sizes[3].IsCount ? 3 : sizes[0].IsCount ? 0 : -1;
        if (index < 0) return;
        var taken = sizes[index];
        var both = sizes[3].IsCount && sizes[0].IsCount && !alone;
        if (both && IsGluedLikeCount(0) && !IsGluedLikeCount(3)) (index, taken) = (0, sizes[0]);
        var isPlain = !alone && IsGluedLikeCount(index) && !(both && IsGluedLikeCount(3 - index));
        sizes.RemoveAt(index);
        SetCount(taken.Whole, taken.Start, taken.End, guessed: !isPlain && (both || alone));
    }

    // "3x 14": no blank before the cross and one behind it. "x3": the other way round.
    private bool IsGluedLikeCount(int index) => index == 0
        ? sizes[0].End < line.Length && IsTimes(line[sizes[0].End]) && sizes[1].Start > sizes[0].End + 1
        : IsTimes(line[sizes[index].Start - 1]) && sizes[index - 1].End < sizes[index].Start - 1;

    private bool IsAlone(WrittenSize size)
    {
        var index = sizes.IndexOf(size);
        return !size.Joined && !(index + 1 < sizes.Count && sizes[index + 1].Joined);
    }

    // "36.5 x 5.4 x 2.2 cm": the unit of the last goes for the others too, unless that makes no sense.
    private bool ShareUnit()
    {
        var last = sizes[2];
        if (!last.HadUnit || sizes[0].HadUnit || sizes[1].HadUnit) return false;
        if (Reread(sizes[0], last) is not { } first || Reread(sizes[1], last) is not { } second) return false;
        var longest = Length.Max(first.Value, Length.Max(second.Value, last.Value));
        if (longest < LeastPlausible || longest > MostPlausible) return false;
        var changed = first.Value != sizes[0].Value || second.Value != sizes[1].Value;
        (sizes[0], sizes[1]) = (first, second);
        return changed;
    }

    /// <summary>A size without unit as if it had that of another; null when it is a fraction or makes no length.</summary>
    private WrittenSize? Reread(WrittenSize size, WrittenSize withUnit)
    {
        var number = line.AsSpan(size.Start, size.End - size.Start);
        if (number.Contains('/') || LengthCharacters.TryGetFraction(number[^1], out _, out _)) return null;
        var unitStart = withUnit.End;
        while (unitStart > withUnit.Start && !char.IsDigit(line[unitStart - 1]) && !LengthCharacters.TryGetFraction(line[unitStart - 1], out _, out _)) unitStart--;
        var text = string.Concat(number, line.AsSpan(unitStart, withUnit.End - unitStart));
        return LengthParser.TryReadPrefix(text, 0, bareUnit, out var value, out var end, out _) && end == text.Length
            ? size with { Value = value, Metric = withUnit.Metric }
            : null;
    }

    private (WrittenSize L, WrittenSize W, WrittenSize T, bool Guessed) Arrange()
    {
        if (sizes.Exists(size => size.Named is not null)) return ArrangeNamed();
        var (a, b, c) = (sizes[0], sizes[1], sizes[2]);

        // "7/8 x 2 1/8 x 14 3/8": from the thinnest up.
        if (a.Value <= b.Value && b.Value <= c.Value && a.Value < c.Value) return (c, b, a, true);

        // "5/4, 14 x 2": the thickness ahead, apart from the others.
        if (IsAlone(a) && c.Joined && a.Value < b.Value && a.Value < c.Value) return (b, c, a, true);
        return (a, b, c, false);
    }

    private (WrittenSize L, WrittenSize W, WrittenSize T, bool Guessed) ArrangeNamed()
    {
        Span<int> places = [-1, -1, -1];
        var rest = new List<int>(3);
        for (var i = 0; i < 3; i++)
        {
            var place = sizes[i].Named is { } named ? named - EntryPart.Length : -1;
            if (place >= 0 && places[place] < 0) places[place] = i;
            else rest.Add(i);
        }

        foreach (var i in rest) places[places.IndexOf(-1)] = i;
        return (sizes[places[0]], sizes[places[1]], sizes[places[2]], rest.Count > 1);
    }
}
