using Scrapwright.Core.Designs;

namespace Scrapwright.Core.Tests.Designs;

/// <summary>
/// Where a square can get to among the rods of a stand when it is pushed and turned on its plate: every pose reached in small moves from the
/// middle, as long as its middle is no further out than the plate's front edge. It knows nothing of how the stand was sized. x to the right, y to the rear, from the middle of the plate. [mm]
/// </summary>
internal static class StackEscape
{
    private const int Turns = 12;
    private const double TurnRadians = Math.PI / 45;

    internal static IEnumerable<(double X, double Y)> Reached(Part plate, double side)
    {
        var (half, middle) = (side / 2, plate.Length.Millimetres / 2);
        var rods = plate.Holes.Select(h => (X: h.FromEnd.Millimetres - middle, Y: h.FromEdge.Millimetres - middle, R: h.Diameter.Millimetres / 2)).ToArray();
        var move = Math.Min(rods[0].R * 0.75, half / 12);
        var (seen, open) = (new HashSet<(int, int, int)> { (0, 0, 0) }, new Queue<(int X, int Y, int Turn)>([(0, 0, 0)]));
        while (open.TryDequeue(out var pose))
        {
            yield return (pose.X * move, pose.Y * move);
            foreach (var (x, y, turn) in ((int, int, int)[])[(1, 0, 0), (-1, 0, 0), (0, 1, 0), (0, -1, 0), (0, 0, 1), (0, 0, -1)])
            {
                var next = (X: pose.X + x, Y: pose.Y + y, Turn: pose.Turn + turn);
                var isNear = Math.Abs(next.X * move) <= 2 * half && next.Y * move >= -middle && next.Y * move <= 2 * half && Math.Abs(next.Turn) <= Turns;
                if (isNear && !rods.Any(rod => Hits(next.X * move, next.Y * move, next.Turn * TurnRadians, half, rod)) && seen.Add(next)) open.Enqueue(next);
            }
        }
    }

    private static bool Hits(double x, double y, double radians, double half, (double X, double Y, double R) rod)
    {
        var (sin, cos) = Math.SinCos(-radians);
        var (dx, dy) = (rod.X - x, rod.Y - y);
        var outX = Math.Max(0, Math.Abs((dx * cos) - (dy * sin)) - half);
        var outY = Math.Max(0, Math.Abs((dx * sin) + (dy * cos)) - half);
        return (outX * outX) + (outY * outY) < rod.R * rod.R;
    }
}
