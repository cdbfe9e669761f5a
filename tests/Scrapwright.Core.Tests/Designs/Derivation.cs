using System.Collections.Immutable;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Tests.Designs;

/// <summary>Short ways to derive a family in tests.</summary>
internal static class Derivation
{
    internal static ImmutableSortedDictionary<string, string> Options(params (string Key, string Value)[] options) =>
        options.ToImmutableSortedDictionary(o => o.Key, o => o.Value);

    internal static DesignOutcome Derive(string family, Shop shop, params (string Key, string Value)[] options) =>
        DesignCatalogue.FindFamily(family)!.Derive(Options(options), new DesignContext(shop));

    internal static Product Make(string family, params (string Key, string Value)[] options) => Make(family, new Shop(), options);

    internal static Product Make(string family, Shop shop, params (string Key, string Value)[] options)
    {
        var outcome = Derive(family, shop, options);
        Assert.True(outcome is DesignOutcome.Derived, outcome is DesignOutcome.Refused r ? string.Join("; ", r.Problems) : "");
        return ((DesignOutcome.Derived)outcome).Product;
    }

    internal static ImmutableArray<DesignProblem> Refuse(string family, params (string Key, string Value)[] options) =>
        Assert.IsType<DesignOutcome.Refused>(Derive(family, new Shop(), options)).Problems;

    internal static Part Part(this Product product, string key) => Assert.Single(product.Parts, p => p.Key == key);

    internal static Length Size(this Product product, string name) =>
        Assert.Single(product.Joints.SelectMany(j => j.Dimensions), d => d.Name == name).Size;

    internal static Length In(long whole, long numerator = 0, long denominator = 1) => Length.FromInches((whole * denominator) + numerator, denominator);

    /// <summary>A length as an option: exact, in millimetres.</summary>
    internal static string Text(Length length) => length.ToExactText(LengthUnit.Millimetre);
}
