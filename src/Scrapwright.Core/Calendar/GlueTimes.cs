using Scrapwright.Core.Finishing;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Calendar;

/// <summary>How long glued wood waits.</summary>
/// <param name="Clamp">In the clamps. [min]</param>
/// <param name="Cure">Until a machine may work it. [min], not below the clamp time</param>
/// <param name="LeastCelsius">What glue, wood and air need; null when the glue is not known. [°C]</param>
/// <param name="Name">Name of the glue.</param>
internal readonly record struct GlueTimes(int Clamp, int Cure, int? LeastCelsius, string Name)
{
    /// <summary>The times of the shop's glue.</summary>
    /// <param name="shop">The shop. Its own waiting time counts where it is longer, and alone where the glue is not known.</param>
    /// <param name="operation">Gluing up or assembling.</param>
    /// <param name="celsius">How warm it is; null for 21 °C. Colder than the glue allows counts as what it allows. [°C]</param>
    /// <remarks>
    /// In the clamps as long as the slower makers say; to the machine after what makers say at least, since the longer figures are for full strength: our own choice.
    /// </remarks>
    internal static GlueTimes Of(Shop shop, Operation operation, double? celsius)
    {
        var own = WorkContent.WaitMinutes(operation, shop);
        if (GlueTable.Find(shop.Glue) is not { } glue) return new(own, own, null, shop.Glue);
        var least = glue.MinimumCelsius.Least;
        if (ClampTime.At(glue, Math.Max(least, celsius ?? ClampTime.TableCelsius)) is not ClampTime.Sets sets) return new(own, own, least, glue.Name);
        var clamp = Math.Max(own, sets.ClampMinutes.Most);
        // Definition: 60 minutes an hour.
        return new(clamp, Math.Max(clamp, sets.CureHours.Least * 60), least, glue.Name);
    }
}
