using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Designs;

/// <summary>How edges are treated: the parameters, and what they give.</summary>
internal readonly record struct EdgeChoice(EdgeTreatment Treatment, Length Size)
{
    private const string Edge = "edge";
    private const string EdgeSize = "edge-size";
    private static readonly ImmutableArray<string> Words = ["eased", "chamfer", "round-over", "square"];

    internal static readonly ImmutableArray<DesignParameter> Parameters =
    [
        new(Edge, "Edges", ParameterKind.Choice, "eased", "Eased by hand, chamfered, rounded over, or left square.", Words),
        new(EdgeSize, "Size of the edges", ParameterKind.Length, "1/8 in", "Chamfer or round-over only.", [], "1/32 in", "1 in"),
    ];

    internal bool IsRouted => Treatment is EdgeTreatment.Chamfer or EdgeTreatment.RoundOver;

    internal static EdgeChoice Read(DesignOptions options)
    {
        var size = options.ReadLength(EdgeSize);
        var treatment = options.ReadChoice(Edge) switch
        {
            "chamfer" => EdgeTreatment.Chamfer,
            "round-over" => EdgeTreatment.RoundOver,
            "square" => EdgeTreatment.Square,
            _ => EdgeTreatment.Eased,
        };
        var choice = new EdgeChoice(treatment, size);
        return choice.IsRouted ? choice : choice with { Size = Length.Zero };
    }

    /// <summary>Both edges of a face fit on the thickness.</summary>
    internal void RequireWithin(Length thickness, DesignOptions options) => RequireAtMost(thickness.Divide(2, Rounding.Down), "half the thickness", options);

    internal void RequireAtMost(Length limit, string reason, DesignOptions options) =>
        options.Require(Size <= limit, EdgeSize, DesignMessages.AtMost(options.ShowMost(limit), reason));

    /// <summary>The step that treats them; none when they stay square.</summary>
    /// <param name="parts">Keys of the parts.</param>
    /// <param name="names">The parts in words.</param>
    internal ImmutableArray<AssemblyStep> Steps(ImmutableArray<string> parts, string names) => Treatment switch
    {
        // End grain first, so that the long-grain pass takes off what the end-grain pass tears: common practice, no source.
        EdgeTreatment.Chamfer =>
            [new(Operation.TreatEdges, Station.Router, parts, $"Chamfer the edges of {names} {{0}}, end grain first.", [Size])],
        EdgeTreatment.RoundOver =>
            [new(Operation.TreatEdges, Station.Router, parts, $"Round the edges of {names} over to {{0}}, end grain first.", [Size])],
        EdgeTreatment.Eased =>
            [new(Operation.TreatEdges, Station.HandTools, parts, $"Break the sharp corners of {names} with fine abrasive paper.", [])],
        _ => [],
    };
}
