using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Tests.Plans;

internal sealed partial class PlanBench
{
    private readonly Dictionary<string, int> layersOf = [];

    /// <summary>Saws a milled strip into layers before it is glued; they are called by its id, a stroke and a number.</summary>
    public PlanBench ResawStrip(string id, int layers)
    {
        var whole = pieces[id];
        var sizes = (whole.Thickness - (Shop.Bandsaw.Kerf * (layers - 1))).Split(layers);
        for (var i = 1; i <= layers; i++)
        {
            layersOf[$"{id}/{i}"] = layers;
        }

        return Cut(Operation.ResawStrips, Station.Bandsaw, id, sizes.Select((t, i) => whole with { Id = $"{id}/{i + 1}", Thickness = t }),
            Shop.Bandsaw.Kerf, whole.Thickness, p => p.Thickness, default, whole.Width);
    }

    public PlanBench CleanSawnFaces(params string[] ids) =>
        Shape(Operation.CleanSawnFaces, Station.Planer, ids, p => p with { Thickness = p.Thickness - Shop.Allowances.ResawCleanUp.Mean });

    /// <summary>Planes strips to the thinnest of them; the thinnest are left alone.</summary>
    public PlanBench PlaneAlike(params string[] ids)
    {
        var thinnest = ids.Min(id => pieces[id].Thickness);
        var thicker = ids.Where(id => pieces[id].Thickness > thinnest).ToArray();
        return thicker.Length == 0 ? this : PlaneToThickness(thinnest, thicker);
    }

    /// <summary>Names strips of a glue-up as sisters; the second is turned over.</summary>
    public PlanBench Sisters(string glueUp, params (string One, string Turned)[] pairs)
    {
        var place = glueUps.FindIndex(g => g.Id == glueUp);
        glueUps[place] = glueUps[place] with
        {
            Strips =
            [
                .. glueUps[place].Strips.Select(s => pairs.Select(p => p.One == s.Piece ? s with { Sister = p.Turned } : p.Turned == s.Piece ? s with { Sister = p.One, TurnedOver = true } : null)
                    .FirstOrDefault(named => named is not null) ?? s),
            ],
        };
        return this;
    }

    private int LayersOf(string id) => layersOf.FirstOrDefault(l => id == l.Key || id.StartsWith(l.Key + "/", StringComparison.Ordinal)) is { Key: not null } found ? found.Value : 1;
}
