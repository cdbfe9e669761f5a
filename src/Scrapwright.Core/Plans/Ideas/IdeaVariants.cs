using System.Collections.Immutable;
using System.Globalization;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Plans.Ideas;

/// <summary>
/// Every design in a few sizes: as it stands; with the other answer to a yes-or-no choice; then one size smaller and two larger (its first length), and half
/// as many and half as many again (its first number). What a parameter does not allow or the design refuses is left out, and what takes the same wood as one before it.
/// </summary>
public static class IdeaVariants
{
    private static readonly ImmutableArray<string> YesOrNo = ["no", "yes"];

    // Quarters of the design's own size; our own choice.
    private static readonly ImmutableArray<int> SizeQuarters = [3, 5, 6];

    // Halves of the design's own number; our own choice.
    private static readonly ImmutableArray<int> CountHalves = [1, 3];

    /// <summary>All of them; those nearest to the designs as they stand come first.</summary>
    /// <param name="request">The workshop: its shop and its own designs.</param>
    public static ImmutableArray<IdeaVariant> For(PlanRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        var designs = request.Designs.Concat(DesignCatalogue.BuiltIn.Where(b => request.Designs.All(d => !string.Equals(d.Key, b.Key, StringComparison.OrdinalIgnoreCase)))).ToArray();
        return
        [
            .. designs.SelectMany(design => OptionsOf(design, request.Shop.Unit).Select(o => (o.Step, Design: design, o.Options)))
                .OrderBy(o => o.Step)
                .Select(o => Find(request, o.Design, o.Step, o.Options))
                .OfType<(IdeaVariant Variant, string Wood)>()
                .DistinctBy(v => (v.Variant.Design, v.Wood))
                .Select(v => v.Variant),
        ];
    }

    private static (IdeaVariant Variant, string Wood)? Find(PlanRequest request, Design design, IdeaStep step, ImmutableSortedDictionary<string, string> options)
    {
        var gift = new Gift { Label = "idea", Design = design.Key, Options = options };
        return GiftDesigns.Derive([gift], request.Designs, request.Shop)[0].Outcome is DesignOutcome.Derived derived
            ? (new IdeaVariant(design.Key, step, derived.Product.Summary, options), WoodOf(derived.Product))
            : null;
    }

    /// <summary>What it takes of the pile: rods are bought.</summary>
    private static string WoodOf(Product product) =>
        string.Join(';', product.Parts.Where(p => p.Kind != PartKind.Rod).Select(p => $"{p.Key} {p.Count} {p.Length.Picometres} {p.Width.Picometres} {p.Thickness.Picometres}"));

    private static IEnumerable<(IdeaStep Step, ImmutableSortedDictionary<string, string> Options)> OptionsOf(Design design, LengthUnit unit)
    {
        yield return (IdeaStep.AsItStands, ImmutableSortedDictionary<string, string>.Empty);
        if (DesignCatalogue.FindFamily(design.Family) is not { } family) yield break;
        foreach (var choice in family.Parameters.Where(p => p.Kind == ParameterKind.Choice && p.Choices.Order(StringComparer.Ordinal).SequenceEqual(YesOrNo)))
            yield return (IdeaStep.OtherChoice, With(choice, Standing(choice) == YesOrNo[0] ? YesOrNo[1] : YesOrNo[0]));
        if (family.Parameters.FirstOrDefault(p => p.Kind == ParameterKind.Length) is { } size)
            foreach (var text in Sizes(size, Standing(size), unit)) yield return (IdeaStep.OtherSize, With(size, text));
        if (family.Parameters.FirstOrDefault(p => p.Kind == ParameterKind.Count) is { } count)
            foreach (var text in Counts(count, Standing(count))) yield return (IdeaStep.OtherNumber, With(count, text));

        string Standing(DesignParameter parameter) => design.Options.TryGetValue(parameter.Key, out var text) ? text : parameter.Default;
    }

    private static ImmutableSortedDictionary<string, string> With(DesignParameter parameter, string text) =>
        ImmutableSortedDictionary<string, string>.Empty.Add(parameter.Key, text);

    private static IEnumerable<string> Sizes(DesignParameter parameter, string standing, LengthUnit unit)
    {
        // Half inches and centimetres are sizes a maker asks for.
        var step = unit == LengthUnit.Inch ? Length.FromInches(1, 2) : Length.FromMillimetres(10);
        if (!LengthParser.Parse(standing, unit).TryGetValue(out var size)) yield break;
        foreach (var quarters in SizeQuarters)
        {
            var other = (size * quarters).Divide(4, Rounding.Nearest).RoundTo(step, Rounding.Nearest);
            if (other != size && !(other < Limit(parameter.Minimum)) && !(other > Limit(parameter.Maximum))) yield return other.ToExactText(unit);
        }
    }

    private static IEnumerable<string> Counts(DesignParameter parameter, string standing)
    {
        if (!int.TryParse(standing, NumberStyles.None, CultureInfo.InvariantCulture, out var count)) yield break;
        foreach (var halves in CountHalves)
        {
            var other = count * halves / 2;
            if (other != count && !(other < Number(parameter.Minimum)) && !(other > Number(parameter.Maximum))) yield return other.ToString(CultureInfo.InvariantCulture);
        }
    }

    private static Length? Limit(string text) => text.Length == 0 ? null : LengthParser.ParseWithUnit(text).Value;

    private static int? Number(string text) => text.Length == 0 ? null : int.Parse(text, CultureInfo.InvariantCulture);
}
