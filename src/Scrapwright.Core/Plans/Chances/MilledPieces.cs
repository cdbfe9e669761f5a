using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans.Chances;

/// <summary>
/// Follows every piece through the steps until it is glued or cut into parts. One work on one piece is one draw from its allowance; whatever is cut from the piece
/// afterwards shares that draw. A saw set to a fence gives an exact width or layer; what the piece was over or under stays in the last one.
/// </summary>
internal sealed class MilledPieces
{
    private readonly Dictionary<string, (MilledSize Width, MilledSize Thickness)> pieces = new(StringComparer.Ordinal);
    private readonly Shop shop;
    private int draws;

    private MilledPieces(Plan plan)
    {
        shop = plan.Request.Shop;
        foreach (var offcut in plan.Request.Pile.SelectMany(o => o.Pieces()))
        {
            pieces[offcut.Label] = (new MilledSize(offcut.Width, []), new MilledSize(offcut.Thickness, []));
        }
    }

    /// <summary>What every strip of a plan measures, and draws for what comes after.</summary>
    public static MilledPieces Of(Plan plan)
    {
        var milled = new MilledPieces(plan);
        foreach (var step in plan.Steps)
        {
            foreach (var work in step.Works.Where(w => step.Operation == Operation.FaceGlue && w.In.All(milled.pieces.ContainsKey)))
            {
                milled.GlueFaces(work);
            }

            foreach (var work in step.Works.Where(w => w.In.Length == 1 && milled.pieces.ContainsKey(w.In[0])))
            {
                milled.Follow(step.Operation, work);
            }
        }

        return milled;
    }

    /// <summary>Width of a strip with both edges jointed; as expected, without spread, when no step makes it.</summary>
    public MilledSize Width(string piece, Length expected) => pieces.TryGetValue(piece, out var known) ? known.Width : new MilledSize(expected, []);

    /// <summary>Thickness of a strip before it is planed alike with others or to the thickness of its parts; as expected, without spread, when no step makes it.</summary>
    public MilledSize Thickness(string piece, Length expected) => pieces.TryGetValue(piece, out var known) ? known.Thickness : new MilledSize(expected, []);

    /// <summary>Number of a draw of its own.</summary>
    public int NewDraw() => draws++;

    /// <summary>A board is over or under by what the two in it are together.</summary>
    private void GlueFaces(Work work)
    {
        var board = work.Out[0];
        pieces[board.Id] = (new MilledSize(board.Width, []), new MilledSize(board.Thickness, [.. work.In.SelectMany(id => pieces[id].Thickness.Draws)]));
    }

    private void Follow(Operation operation, Work work)
    {
        var (width, thickness) = pieces[work.In[0]];
        switch (operation)
        {
            case Operation.FaceJoint:
                pieces[work.In[0]] = (width, thickness.After(work.Out[0].Thickness, draws++, shop.Allowances.FaceJoint.Spread.Millimetres));
                break;
            case Operation.FacePlane:
                pieces[work.In[0]] = (width, thickness.After(work.Out[0].Thickness, draws++, shop.Allowances.FacePlane.Spread.Millimetres));
                break;
            case Operation.CleanSawnFaces:
                pieces[work.In[0]] = (width, thickness.After(work.Out[0].Thickness, draws++, shop.Allowances.ResawCleanUp.Spread.Millimetres));
                break;
            case Operation.EdgeJoint:
                pieces[work.In[0]] = (width.After(work.Out[0].Width, draws++, EdgesSpreadMm(work)), thickness);
                break;
            case Operation.RoughRip or Operation.Rip:
                Cut(work, (piece, isLast) => (new MilledSize(piece.Width, isLast ? width.Draws : []), thickness));
                break;
            case Operation.ResawStrips:
                Cut(work, (piece, isLast) => (width, new MilledSize(piece.Thickness, isLast ? thickness.Draws : [])));
                break;
            case Operation.RoughCrosscut or Operation.CrosscutStrips:
                Cut(work, (_, _) => (width, thickness));
                break;
        }
    }

    /// <summary>Each edge is a work of its own; together they spread by the root of their number.</summary>
    private double EdgesSpreadMm(Work work)
    {
        var edge = shop.Allowances.EdgeJoint;
        var edges = edge.Mean.IsPositive ? work.Taken.Picometres / edge.Mean.Picometres : 2;
        return edge.Spread.Millimetres * Math.Sqrt(edges);
    }

    private void Cut(Work work, Func<Piece, bool, (MilledSize Width, MilledSize Thickness)> size)
    {
        for (var i = 0; i < work.Out.Length; i++)
        {
            pieces[work.Out[i].Id] = size(work.Out[i], i == work.Out.Length - 1);
        }
    }
}
