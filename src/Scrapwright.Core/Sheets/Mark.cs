using System.Collections.Immutable;

namespace Scrapwright.Core.Sheets;

/// <summary>Something drawn on a sheet, in real lengths.</summary>
public abstract record Mark
{
    private Mark()
    {
    }

    /// <summary>The frame it fills, without the width of its line.</summary>
    public abstract Frame Bounds { get; }

    /// <summary>The same mark moved right and down. [mm]</summary>
    public abstract Mark Moved(double rightMm, double downMm);

    /// <summary>A straight line.</summary>
    /// <param name="From">Where it begins.</param>
    /// <param name="To">Where it ends.</param>
    /// <param name="Ink">How it is drawn.</param>
    public sealed record Line(Spot From, Spot To, Ink Ink) : Mark
    {
        /// <inheritdoc/>
        public override Frame Bounds => Frame.Around([From, To]);

        /// <inheritdoc/>
        public override Mark Moved(double rightMm, double downMm) =>
            this with { From = From.Moved(rightMm, downMm), To = To.Moved(rightMm, downMm) };
    }

    /// <summary>An upright rectangle.</summary>
    /// <param name="Frame">Where.</param>
    /// <param name="Ink">Its outline; null for none.</param>
    /// <param name="Fill">Its colour as <c>#rrggbb</c>; null for none.</param>
    public sealed record Rectangle(Frame Frame, Ink? Ink, string? Fill = null) : Mark
    {
        /// <inheritdoc/>
        public override Frame Bounds => Frame;

        /// <inheritdoc/>
        public override Mark Moved(double rightMm, double downMm) => this with { Frame = Frame.Moved(rightMm, downMm) };
    }

    /// <summary>A closed polygon.</summary>
    /// <param name="Corners">Its corners in order; at least three.</param>
    /// <param name="Ink">Its outline; null for none.</param>
    /// <param name="Fill">Its colour as <c>#rrggbb</c>; null for none.</param>
    public sealed record Polygon(ImmutableArray<Spot> Corners, Ink? Ink, string? Fill = null) : Mark
    {
        /// <inheritdoc/>
        public override Frame Bounds => Frame.Around(Corners);

        /// <inheritdoc/>
        public override Mark Moved(double rightMm, double downMm) =>
            this with { Corners = [.. Corners.Select(c => c.Moved(rightMm, downMm))] };
    }

    /// <summary>A circle.</summary>
    /// <param name="Middle">Its middle.</param>
    /// <param name="RadiusMm">Its radius. [mm]</param>
    /// <param name="Ink">Its outline; null for none.</param>
    /// <param name="Fill">Its colour as <c>#rrggbb</c>; null for none.</param>
    public sealed record Circle(Spot Middle, double RadiusMm, Ink? Ink, string? Fill = null) : Mark
    {
        /// <inheritdoc/>
        public override Frame Bounds => new(Middle.XMm - RadiusMm, Middle.YMm - RadiusMm, 2 * RadiusMm, 2 * RadiusMm);

        /// <inheritdoc/>
        public override Mark Moved(double rightMm, double downMm) => this with { Middle = Middle.Moved(rightMm, downMm) };
    }

    /// <summary>One line of text, upright.</summary>
    /// <param name="Foot">Left end of the line the letters stand on.</param>
    /// <param name="Runs">What it says, run after run.</param>
    /// <param name="Bold">True for heavy letters.</param>
    /// <param name="Colour">Colour as <c>#rrggbb</c>.</param>
    public sealed record Text(Spot Foot, ImmutableArray<TextRun> Runs, bool Bold = false, string Colour = Ink.Black) : Mark
    {
        /// <summary>The letters of all runs.</summary>
        public string Letters => string.Concat(Runs.Select(r => r.Text));

        /// <summary>Width by the font's advance widths. [mm]</summary>
        public double WidthMm => Runs.Sum(r => FontAdvances.WidthMm(r.Text, r.SizePt, Bold) + r.SpaceMm);

        /// <inheritdoc/>
        public override Frame Bounds
        {
            get
            {
                var above = Runs.Max(r => r.RaiseMm + FontAdvances.AscentMm(r.SizePt));
                var below = Runs.Max(r => FontAdvances.DescentMm(r.SizePt) - r.RaiseMm);
                return new(Foot.XMm, Foot.YMm - above, WidthMm, above + below);
            }
        }

        /// <inheritdoc/>
        public override Mark Moved(double rightMm, double downMm) => this with { Foot = Foot.Moved(rightMm, downMm) };
    }

    /// <summary>The strokes of a hatch, already cut to the outline they fill.</summary>
    /// <param name="Strokes">The strokes; at least one.</param>
    /// <param name="Ink">How they are drawn.</param>
    public sealed record Hatch(ImmutableArray<Stroke> Strokes, Ink Ink) : Mark
    {
        /// <inheritdoc/>
        public override Frame Bounds => Frame.Around(Strokes.SelectMany(s => new[] { s.From, s.To }));

        /// <inheritdoc/>
        public override Mark Moved(double rightMm, double downMm) =>
            this with { Strokes = [.. Strokes.Select(s => new Stroke(s.From.Moved(rightMm, downMm), s.To.Moved(rightMm, downMm)))] };
    }

    /// <summary>Marks that belong together.</summary>
    /// <param name="Name">What they are, for people who read the file and for tests.</param>
    /// <param name="Marks">The marks, drawn in order.</param>
    public sealed record Group(string Name, ImmutableArray<Mark> Marks) : Mark
    {
        /// <inheritdoc/>
        public override Frame Bounds => Frame.Around(
            Marks.Select(m => m.Bounds).SelectMany(b => new[] { new Spot(b.LeftMm, b.TopMm), new Spot(b.RightMm, b.BottomMm) }));

        /// <inheritdoc/>
        public override Mark Moved(double rightMm, double downMm) => this with { Marks = [.. Marks.Select(m => m.Moved(rightMm, downMm))] };
    }
}
