using Scrapwright.Core.Measures;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Sheets;

/// <summary>What the maker does at the bench so that two thin offcuts become one board. Common practice, no source.</summary>
public static class FaceWords
{
    /// <summary>What to mind at a step; empty where nothing is glued face to face.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="step">One of its steps.</param>
    /// <param name="size">How a length is written.</param>
    public static string Of(Plan plan, Step step, Func<Length, string> size)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(step);
        ArgumentNullException.ThrowIfNull(size);
        if (step.Operation == Operation.FaceGlue && BoardOf(plan, step) is { } board)
        {
            return $"{board.Upper} on {board.Lower}, flat faces together, marked ends and lower edges flush, grain the same way. Glue over the whole face, cauls across the whole width, {board.ClampsNeeded} clamps, from the middle outwards. "
                + $"Write {board.Label} on it. When the glue has set, saw off what sticks out beyond {size(board.Length)} × {size(board.Width)}. Where it is thinnest it should be {size(board.Thickness)} thick; from now on it is one board.";
        }

        if (step.Operation != Operation.FaceJoint || !step.Works.All(w => w.In is [var only] && plan.Faced.Any(f => f.IsOf(only)))) return "";

        // One that is surfaced and flat already is not jointed.
        var jointed = step.Works.Select(w => w.In[0]).ToHashSet(StringComparer.Ordinal);
        var faces = plan.Faced.SelectMany(f => ((string Offcut, string Face)[])[(f.Upper, $"the lower face of {f.Upper}"), (f.Lower, $"the upper face of {f.Lower}")]).Where(f => jointed.Contains(f.Offcut));
        return $"Only the faces that will be glued together: {string.Join(", ", faces.Select(f => f.Face))}. The others follow when the boards are milled.";
    }

    /// <summary>The board that a step glues; null when it glues none.</summary>
    public static FacedBoard? BoardOf(Plan plan, Step step)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(step);
        return step.Operation == Operation.FaceGlue && step.Works is [{ Out: [var glued] }] ? plan.Faced.FirstOrDefault(f => f.Label == glued.Id) : null;
    }

    /// <summary>A board in one line: <c>A3 on B7 gives A3+B7, 24 in × 4 in × 5/8 in</c>.</summary>
    /// <param name="board">The board.</param>
    /// <param name="size">How a length is written.</param>
    public static string Of(FacedBoard board, Func<Length, string> size)
    {
        ArgumentNullException.ThrowIfNull(board);
        ArgumentNullException.ThrowIfNull(size);
        return $"{board.Upper} on {board.Lower} gives {board.Label}, {size(board.Length)} × {size(board.Width)} × {size(board.Thickness)}, {board.ClampsNeeded} clamps";
    }
}
