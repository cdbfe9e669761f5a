using ArchUnitNET.Domain;
using ArchUnitNET.Loader;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Finishing;
using Scrapwright.Core.Fits;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;
using static ArchUnitNET.Fluent.ArchRuleDefinition;

namespace Scrapwright.Architecture.Tests;

/// <summary>Core's areas stand in order; each knows only those before it.</summary>
public sealed class AreaTests
{
    private const string Root = "Scrapwright.Core";

    // Those that exist take their name from a type, so that a renamed area cannot slip through; those to come only have their place.
    private static readonly string[] Order =
    [
        typeof(Length).Namespace!,
        typeof(Species).Namespace!,
        typeof(Offcut).Namespace!,
        typeof(Shop).Namespace!,
        typeof(Design).Namespace!,
        typeof(StripMilling).Namespace!,
        typeof(Gift).Namespace!,
        typeof(Plan).Namespace!,
        typeof(Glue).Namespace!,
        typeof(SeasonFit).Namespace!,
        typeof(ScheduleProblem).Namespace!,
        Root + ".Sheets",
    ];

    private static readonly string[] MayBeEmpty = [Root + ".Sheets"];

    private static readonly ArchUnitNET.Domain.Architecture Loaded = new ArchLoader().LoadAssemblies(typeof(Offcut).Assembly).Build();

    public static TheoryData<string> Areas => [.. Order.Where(area => !MayBeEmpty.Contains(area) || TypesIn(area).Any())];

    public static TheoryData<string> AreasBeforeOthers => [.. Areas.Select(row => row.Data).Where(area => area != Order[^1])];

    [Fact]
    public void Every_namespace_of_Core_belongs_to_an_area()
    {
        var strangers = typeof(Offcut).Assembly.GetTypes()
            .Select(type => type.Namespace)
            .Where(name => name is not null && name.StartsWith(Root + ".", StringComparison.Ordinal) && !Order.Any(area => IsIn(name, area)))
            .Distinct();

        Assert.Empty(strangers);
    }

    [Theory]
    [MemberData(nameof(Areas))]
    public void An_area_has_types(string area)
    {
        Assert.NotEmpty(TypesIn(area));
        Assert.Contains(Loaded.Types, type => IsIn(type.Namespace.FullName, area));
    }

    [Theory]
    [MemberData(nameof(AreasBeforeOthers))]
    public void An_area_knows_no_later_one(string area)
    {
        var later = Order[(Array.IndexOf(Order, area) + 1)..];

        var rule = Types().That().ResideInNamespaceMatching(Pattern(area))
            .Should().NotDependOnAny(Types().That().ResideInNamespaceMatching(Pattern(later)))
            .WithoutRequiringPositiveResults();

        Assert.Empty(rule.Evaluate(Loaded).Where(result => !result.Passed).Select(result => result.Description));
    }

    [Fact]
    public void A_dependency_on_an_earlier_area_is_seen()
    {
        // The other way round the same rule must fail, else the rule above proves nothing.
        var rule = Types().That().ResideInNamespaceMatching(Pattern(typeof(Plan).Namespace!))
            .Should().NotDependOnAny(Types().That().ResideInNamespaceMatching(Pattern(typeof(Offcut).Namespace!)));

        Assert.False(rule.HasNoViolations(Loaded));
    }

    private static IEnumerable<System.Type> TypesIn(string area) => typeof(Offcut).Assembly.GetTypes().Where(type => type.Namespace is { } name && IsIn(name, area));

    private static bool IsIn(string name, string area) => name == area || name.StartsWith(area + ".", StringComparison.Ordinal);

    private static string Pattern(params string[] areas) => $"^({string.Join('|', areas.Select(area => area.Replace(".", "\\.", StringComparison.Ordinal)))})(\\.|$)";
}
