using System.Globalization;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Sheets;
using Scrapwright.Core.Wood;

namespace Scrapwright.Cli.Output;

/// <summary>The facts of a wood, or of two side by side, in plain lines.</summary>
internal static class WoodText
{
    private const int TitleWidth = 22;

    internal static IEnumerable<string> Lines(Species species, LengthUnit unit)
    {
        yield return Name(species);
        yield return $"{WoodFigures.BoardInWords(unit)}:";
        foreach (var figure in WoodFigures.Of(species, unit)) yield return $"  {figure.Title.PadRight(TitleWidth)}{Number(figure, unit)}";
        foreach (var line in Care(species)) yield return line;
    }

    internal static IEnumerable<string> Lines(Species first, Species second, LengthUnit unit)
    {
        yield return Name(first);
        yield return Name(second);
        yield return $"{WoodFigures.BoardInWords(unit)}:";
        var figures = WoodFigures.Of(first, unit).Zip(WoodFigures.Of(second, unit)).ToList();
        var one = Math.Max(first.Name.Length, figures.Max(pair => pair.First.Text.Length)) + 2;
        var other = Math.Max(second.Name.Length, figures.Max(pair => pair.Second.Text.Length)) + 2;
        yield return $"  {"".PadRight(TitleWidth)}{first.Name.PadRight(one)}{second.Name.PadRight(other)}difference";
        foreach (var (a, b) in figures) yield return $"  {a.Title.PadRight(TitleWidth)}{a.Text.PadRight(one)}{b.Text.PadRight(other)}{a.DifferenceTo(b)}".TrimEnd();
        yield return $"Side by side, {second.Name} against {first.Name} (estimate):";
        var (facts, others) = (WoodFacts.For(first), WoodFacts.For(second));
        foreach (var (title, a, b) in new[] { ("Fresh", facts.Fresh, others.Fresh), ("Oiled", facts.Oiled, others.Oiled), ("Aged", facts.Aged, others.Aged) })
        {
            var contrast = Contrast.Between(a, b);
            yield return string.Create(CultureInfo.InvariantCulture, $"  {title.PadRight(8)}{contrast.InWords}, ΔE {contrast.Difference:0}; {contrast.WithoutColourInWords}");
        }

        foreach (var species in new[] { first, second })
        {
            yield return $"{species.Name}:";
            foreach (var line in Care(species)) yield return $"  {line}";
        }
    }

    private static IEnumerable<string> Care(Species species)
    {
        var facts = WoodFacts.For(species);
        yield return $"Colour: {facts.AgedInWords} (estimate)";
        if (!species.Cautions.IsEmpty) yield return "Cautions:";
        foreach (var caution in species.Cautions) yield return $"  {caution}";
        yield return "Wear and do; the machine's manual and local rules come first:";
        foreach (var advice in facts.DustCare.Advice) yield return $"  {advice}";
        yield return "Dust limits, mean over eight hours:";
        foreach (var limit in facts.DustLimits) yield return $"  {limit.InWords} [{limit.Source.Key}]";
        yield return "Sources:";
        foreach (var (value, source) in facts.Sources) yield return $"  {value}: {source}";
    }

    private static string Name(Species species) => $"{species.Name}: {species.FullName}, {species.ScientificName}";

    private static string Number(WoodFigure figure, LengthUnit unit) => figure.Size is { } size && unit == LengthUnit.Inch
        ? $"{LengthFormatter.Format(size, new LengthStyle { Unit = unit, Denominator = 64, Approximate = false })} ({figure.Text})"
        : figure.Text;
}
