using System.Text.RegularExpressions;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Shops;
using static Scrapwright.Core.Tests.Designs.Derivation;

namespace Scrapwright.Core.Tests.Designs;

public sealed class DesignCatalogueTests
{
    public static TheoryData<string, bool> Products
    {
        get
        {
            var data = new TheoryData<string, bool>();
            foreach (var family in DesignCatalogue.Families)
            {
                data.Add(family.Key, false);
                if (family.Parameters.Any(p => p.Key == "with-squares")) data.Add(family.Key, true);
            }

            return data;
        }
    }

    [Fact]
    public void There_are_three_families_and_a_design_of_each()
    {
        Assert.Equal(["striped-squares", "rod-stand", "u-stand"], DesignCatalogue.Families.Select(f => f.Key));
        Assert.Equal(DesignCatalogue.Families.Select(f => f.Key), DesignCatalogue.BuiltIn.Select(d => d.Family));
        Assert.Same(DesignCatalogue.Families[1], DesignCatalogue.FindFamily("ROD-STAND"));
    }

    [Fact]
    public void Keys_are_unique_and_lower_case_and_hints_are_there() => Assert.All(DesignCatalogue.Families, family =>
    {
        Assert.Equal(family.Parameters.Length, family.Parameters.Select(p => p.Key).Distinct().Count());
        Assert.All(family.Parameters, p => Assert.Matches("^[a-z]+(-[a-z]+)*$", p.Key));
        Assert.All(family.Parameters, p => Assert.True(p.Title.Length > 0 && p.Hint.EndsWith('.')));
        Assert.All(family.Parameters, p => Assert.Equal(p.Kind == ParameterKind.Choice, p.Choices.Length > 0));
    });

    // docs: every panel and solid part loses both faces' sanding once, so it is in exactly one sanding step.
    [Theory]
    [MemberData(nameof(Products))]
    public void Every_panel_and_solid_part_is_sanded_once(string family, bool withSquares)
    {
        var product = MakeOf(family, withSquares);

        foreach (var part in product.Parts.Where(p => p.Kind != PartKind.Rod))
            Assert.Single(product.Assembly, s => s.Operation == Operation.Sand && s.Parts.Contains(part.Key));
    }

    [Theory]
    [MemberData(nameof(Products))]
    public void Every_copy_of_a_solid_part_is_in_one_run(string family, bool withSquares)
    {
        var product = MakeOf(family, withSquares);

        var copies = from p in product.Parts where p.Kind == PartKind.Solid from c in Enumerable.Range(1, p.Count) select (p.Key, c);
        var members = product.Runs.SelectMany(r => r.Members).ToArray();
        Assert.Equal(copies.Order(), members.Select(m => (m.Part, m.Copy)).Order());
        Assert.Equal(members.Length, members.Select(m => m.Mark).Distinct().Count());
        foreach (var run in product.Runs) Assert.Single(run.Members.Select(m => product.Part(m.Part)).Select(p => (p.Width, p.Thickness)).Distinct());
    }

    [Theory]
    [MemberData(nameof(Products))]
    public void Steps_name_parts_that_exist_and_exactly_the_sizes_they_have(string family, bool withSquares)
    {
        var product = MakeOf(family, withSquares);

        Assert.Equal(product.Parts.Length, product.Parts.Select(p => p.Key).Distinct().Count());
        foreach (var step in product.Assembly)
        {
            Assert.All(step.Parts, key => product.Part(key));
            var named = Regex.Matches(step.Text, @"\{(\d+)\}").Select(m => int.Parse(m.Groups[1].Value)).Distinct().Order();
            Assert.Equal(Enumerable.Range(0, step.Sizes.Length), named);
            Assert.All(step.Sizes, size => Assert.False(size.IsNegative));
        }

        Assert.All(product.Joints, j => Assert.All(j.Parts, key => product.Part(key)));
        Assert.Equal(withSquares || family == "striped-squares", product.Parts.Any(p => p.Key == "square"));
        Assert.Equal(product.Parts.Any(p => p.Kind == PartKind.Rod), product.Assembly.Any(s => s.Operation == Operation.CutRods));
    }

    private static Product MakeOf(string family, bool withSquares) =>
        withSquares ? Make(family, ("with-squares", "yes"), ("edge", "chamfer")) : Make(family);
}
