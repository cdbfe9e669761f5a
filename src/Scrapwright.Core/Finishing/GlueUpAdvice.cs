using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;

namespace Scrapwright.Core.Finishing;

/// <summary>What gluing one glue-up takes: glue, pressure, clamps, cauls, time, and what to mind. Nothing of it changes the plan.</summary>
public sealed record GlueUpAdvice
{
    /// <summary>Squeeze-out, brush and cup on top of what stays on the lines. [1]; estimate.</summary>
    public const double WasteFactor = 1.2;

    /// <summary>Key of the glue as the shop has it.</summary>
    public required string GlueKey { get; init; }

    /// <summary>The glue; null when the table does not know the key: figures that hang on it are null too.</summary>
    public required Glue? Glue { get; init; }

    /// <summary>How many glue lines: one fewer than strips.</summary>
    public required int Lines { get; init; }

    /// <summary>Area of one glue line: overlap times glued thickness.</summary>
    public required Area LineArea { get; init; }

    /// <summary>Area of all glue lines.</summary>
    public Area GlueArea => LineArea * Lines;

    /// <summary>Glue to pour out or mix, waste included. [g]</summary>
    public required Band? Grams { get; init; }

    /// <summary>Pressure over the woods of the glue-up, from what the lightest wants at least to what the densest may get. [kPa]</summary>
    public required Band? Kilopascals { get; init; }

    /// <summary>Force of all clamps together. The lines stand one behind the other, so each gets all of it. [N]</summary>
    public required Band? Newtons { get; init; }

    /// <summary>Force of one clamp when the plan's clamps share it, rounded outwards. [N]</summary>
    public Band? NewtonsEach => Newtons is { } all && ClampsPlanned > 0 ? Band.Around((double)all.Least / ClampsPlanned, (double)all.Most / ClampsPlanned) : null;

    /// <summary>How many clamps that force takes, the strongest that reach first; null when no clamp reaches.</summary>
    public required Band? ClampsByForce { get; init; }

    /// <summary>How many clamps the plan counts on.</summary>
    public required int ClampsPlanned { get; init; }

    /// <summary>Distance between neighbouring clamps.</summary>
    public required Length ClampGap { get; init; }

    /// <summary>Thickness of a caul along both edges, so that the first glue line is pressed everywhere; zero when none is needed.</summary>
    public required Length Caul { get; init; }

    /// <summary>Spreading, closing and tightening. [s]; estimate.</summary>
    public required int SpreadSeconds { get; init; }

    /// <summary>In how many goes to glue it, so that each closes while the glue is open: 1 when all goes at once.</summary>
    public required int Goes { get; init; }

    /// <summary>What the times are for. [°C]</summary>
    public required double TemperatureCelsius { get; init; }

    /// <summary>Times in the clamps, or that it is too cold; null when the glue is not known.</summary>
    public required ClampTime? Time { get; init; }

    /// <summary>What to mind, each a short sentence in the maker's units; empty when nothing is out of the way.</summary>
    public required ImmutableArray<string> Cautions { get; init; }

    /// <summary>The advice in a few short lines in the maker's units, cautions left out.</summary>
    public required ImmutableArray<AdviceFact> Facts { get; init; }

    /// <summary>The advice for one glue-up of a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="glueUp">One of its glue-ups.</param>
    /// <param name="month">1 to 12 for the mean temperature of the shop's climate in that month; null, or a climate that is not known: 21 °C.</param>
    public static GlueUpAdvice For(Plan plan, GlueUp glueUp, int? month = null)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return For(new PlanIndex(plan, []), glueUp, month);
    }

    /// <summary>The same, for a plan that is indexed already.</summary>
    /// <param name="index">The plan; its designs are not needed.</param>
    /// <param name="glueUp">One of its glue-ups.</param>
    /// <param name="month">As above.</param>
    public static GlueUpAdvice For(PlanIndex index, GlueUp glueUp, int? month = null)
    {
        ArgumentNullException.ThrowIfNull(index);
        ArgumentNullException.ThrowIfNull(glueUp);
        return new GlueUpAdviser(index, glueUp, month).Advise();
    }
}
