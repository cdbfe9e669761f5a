using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Tests.Plans;

internal sealed partial class PlanBench
{
    private readonly List<FacedBoard> boardsGlued = [];
    private readonly Dictionary<string, Volume> faced = [];

    /// <summary>Glues two rough offcuts, jointed on one face, into a board that is rough outside.</summary>
    public PlanBench GlueFaces(string upper, string lower, int clamps)
    {
        Piece one = pieces[upper], other = pieces[lower];
        var label = $"{upper}+{lower}";
        var (length, width) = (Length.Min(one.Length, other.Length), Length.Min(one.Width, other.Width));
        boardsGlued.Add(new FacedBoard(label, upper, lower, one.Thickness, other.Thickness, length, width, one.Thickness + other.Thickness, clamps));
        offcuts[label] = new Offcut { Label = label, Species = offcuts[upper].Species, Length = length, Width = width, Thickness = one.Thickness + other.Thickness };
        Add(Operation.FaceGlue, Station.Clamps, [new Work { In = [upper, lower], Out = [new Piece(label, length, width, one.Thickness + other.Thickness, [new Lane(label, width)])] }]);
        foreach (var half in new[] { one, other })
        {
            faced[half.Id] = Volume.Of(length, width, half.Thickness);
            lost[(half.Id, Operation.FaceGlue)] -= faced[half.Id];
        }

        lost.Remove((label, Operation.FaceGlue));
        return this;
    }
}
