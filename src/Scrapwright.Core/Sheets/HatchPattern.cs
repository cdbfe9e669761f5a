namespace Scrapwright.Core.Sheets;

/// <summary>One set of parallel lines of a hatch.</summary>
/// <param name="AngleDegrees">Angle to the level. [°]</param>
/// <param name="DistanceMm">Distance from line to line. [mm]</param>
/// <param name="PairMm">Distance of a second line beside each; 0 for none. [mm]</param>
/// <param name="DashMm">Length of a dash; 0 for unbroken lines. [mm]</param>
/// <param name="GapMm">Gap between dashes. [mm]</param>
internal sealed record HatchPattern(double AngleDegrees, double DistanceMm, double PairMm, double DashMm, double GapMm)
{
    internal IEnumerable<Stroke> Strokes(Frame frame)
    {
        // Exact for the four angles in use, so that files do not depend on a machine's sine.
        var (alongX, alongY) = AngleDegrees switch { 0 => (1.0, 0.0), 90 => (0.0, 1.0), 45 => (Half, -Half), _ => (Half, Half) };
        var (acrossX, acrossY) = (-alongY, alongX);
        double[] offsets = [0, .. PairMm > 0 ? new[] { PairMm } : []];
        var corners = new[]
        {
            new Spot(frame.LeftMm, frame.TopMm), new(frame.RightMm, frame.TopMm), new(frame.LeftMm, frame.BottomMm), new(frame.RightMm, frame.BottomMm),
        };
        // Measured from the frame's own corner, so that a strip looks the same wherever it lies.
        double Across(Spot s) => ((s.XMm - frame.LeftMm) * acrossX) + ((s.YMm - frame.TopMm) * acrossY);
        var first = (int)Math.Floor(corners.Min(Across) / DistanceMm) - 1;
        var lastLine = (int)Math.Ceiling(corners.Max(Across) / DistanceMm);
        for (var line = first; line <= lastLine; line++)
        {
            foreach (var offset in offsets)
            {
                var distance = ((line + 0.5) * DistanceMm) + offset;
                var start = new Spot(frame.LeftMm + (distance * acrossX), frame.TopMm + (distance * acrossY));
                foreach (var stroke in Cut(start, alongX, alongY, frame, line)) yield return stroke;
            }
        }
    }

    private static double Half { get; } = Math.Sqrt(0.5);

    private IEnumerable<Stroke> Cut(Spot start, double alongX, double alongY, Frame frame, int line)
    {
        var (from, to) = (double.NegativeInfinity, double.PositiveInfinity);
        if (!Clip(start.XMm, alongX, frame.LeftMm, frame.RightMm, ref from, ref to)
            || !Clip(start.YMm, alongY, frame.TopMm, frame.BottomMm, ref from, ref to)
            || to - from < 0.05)
        {
            yield break;
        }

        Spot At(double t) => new(start.XMm + (t * alongX), start.YMm + (t * alongY));
        if (DashMm == 0)
        {
            yield return new(At(from), At(to));
            yield break;
        }

        var period = DashMm + GapMm;
        var shift = line % 2 == 0 ? 0 : period / 2;
        for (var dash = (Math.Floor((from - shift) / period) * period) + shift; dash < to; dash += period)
        {
            var (a, b) = (Math.Max(from, dash), Math.Min(to, dash + DashMm));
            if (b - a > 0.05) yield return new(At(a), At(b));
        }
    }

    private static bool Clip(double start, double along, double low, double high, ref double from, ref double to)
    {
        if (Math.Abs(along) < 1e-9) return start > low && start < high;
        var (a, b) = ((low - start) / along, (high - start) / along);
        from = Math.Max(from, Math.Min(a, b));
        to = Math.Min(to, Math.Max(a, b));
        return to > from;
    }
}
