using System.Reflection;
using System.Runtime.CompilerServices;
using Microsoft.AspNetCore.Components;

namespace Scrapwright.Architecture.Tests;

/// <summary>What public types look like.</summary>
public sealed class TypeTests
{
    /// <summary>Numbers that carry no unit, by type, member and parameter.</summary>
    private static readonly string[] Dimensionless =
    [
        // CIELAB coordinates.
        "LabColour(l)", "LabColour(a)", "LabColour(b)",
        // Density over that of water, and a number of standard deviations.
        "SpecificGravity.DensityKgPerM3(specificGravity)", "SpecificGravity.FromBasic(basicSpecificGravity)", "SpecificGravity.FromTable(specificGravity12)", "Chance.NormalShare(z)", "Chance.Margin(deviations)",
        // Time over the time that water needs through half a board.
        "Acclimatisation.ShareReached(fourierNumber)",
        "DensityClasses.Of(specificGravity)",
        // Ratio of two particle sizes.
        "GritSequence.From(largestStep)",
        // Chances, 0 to 1.
        "GiftChance(share)", "SizeChances(width)", "SizeChances(thickness)", "SizeChances(length)",
    ];

    private static readonly string[] Units =
    [
        "Picometres", "Micrometres", "Millimetres", "Metres", "Mm", "Inches", "Percent", "PerPercent", "PerMille", "Celsius", "KgPerM3", "Degrees", "Minutes", "Seconds", "Hours", "Days", "Points", "Pt",
    ];

    private static readonly Type[] PublicTypes = [.. Projects.Assemblies.Values.SelectMany(assembly => assembly.GetExportedTypes()).Where(IsWritten)];

    [Fact]
    public void Public_classes_are_sealed_abstract_or_static()
    {
        var open = PublicTypes.Where(type => type.IsClass && !type.IsSealed && !type.IsAbstract && !IsMadeByATool(type));

        Assert.NotEmpty(PublicTypes);
        Assert.Empty(open.Select(type => type.FullName));
    }

    [Fact]
    public void Public_value_types_are_readonly()
    {
        var structs = PublicTypes.Where(type => type.IsValueType && !type.IsEnum).ToArray();

        Assert.NotEmpty(structs);
        Assert.Empty(structs.Where(type => !type.IsDefined(typeof(IsReadOnlyAttribute), inherit: false)).Select(type => type.FullName));
    }

    [Fact]
    public void Doubles_of_Core_end_in_their_unit()
    {
        var parameters = Projects.Assemblies["Core"].GetExportedTypes().SelectMany(DoubleParameters).ToArray();

        Assert.NotEmpty(parameters);
        Assert.DoesNotContain(parameters, name => !EndsInUnit(name) && !Dimensionless.Contains(name));
        Assert.Empty(Dimensionless.Except(parameters));
    }

    private static IEnumerable<string> DoubleParameters(Type type) =>
        type.GetMembers(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly)
            .OfType<MethodBase>()
            .Where(method => !method.IsSpecialName || method is ConstructorInfo)
            .Where(method => method.Name != "Deconstruct" && !method.IsDefined(typeof(CompilerGeneratedAttribute), inherit: false))
            .SelectMany(method => method.GetParameters()
                .Where(parameter => parameter.ParameterType == typeof(double))
                .Select(parameter => $"{type.Name}{(method is ConstructorInfo ? "" : "." + method.Name)}({Lowered(parameter.Name!)})"))
            .Distinct();

    private static string Lowered(string name) => char.ToLowerInvariant(name[0]) + name[1..];

    private static bool EndsInUnit(string name) => Units.Any(unit =>
        name.EndsWith($"{unit})", StringComparison.Ordinal) || name.EndsWith($"({Lowered(unit)})", StringComparison.Ordinal));

    private static bool IsWritten(Type type) => !type.IsDefined(typeof(CompilerGeneratedAttribute), inherit: false);

    // Razor components are classes that Blazor's compiler writes, and the migrations' bases are open by EF Core's template.
    private static bool IsMadeByATool(Type type) =>
        typeof(IComponent).IsAssignableFrom(type) || type.Namespace == "Scrapwright.Storage.Migrations" || type.Name == "Program" || type.Name == "_Imports";
}
