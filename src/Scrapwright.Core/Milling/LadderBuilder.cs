using System.Collections.Immutable;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Milling;

/// <summary>Builds a <see cref="Ladder"/> rung by rung; spreads of independent operations add as squares.</summary>
public sealed class LadderBuilder
{
    private readonly ImmutableArray<Rung>.Builder rungs = ImmutableArray.CreateBuilder<Rung>();
    private readonly Length start;
    private Length size;
    private double variance;

    /// <summary>Begins at a size known with some spread (zero when just measured).</summary>
    public LadderBuilder(Length start, Length spread)
    {
        this.start = start;
        size = start;
        variance = (double)spread.Picometres * spread.Picometres;
    }

    /// <summary>Size after the last rung so far.</summary>
    public Length Size => size;

    /// <summary>One standard deviation of it, rounded up to a picometre.</summary>
    public Length Spread => Length.FromPicometres((long)Math.Ceiling(Math.Sqrt(variance)));

    /// <summary>An operation that takes an allowance and, exactly known, some more.</summary>
    public LadderBuilder Take(Operation operation, Allowance allowance, Length more = default, int times = 1)
    {
        ArgumentNullException.ThrowIfNull(allowance);
        var taken = (allowance.Mean * times) + more;
        size -= taken;
        variance += (double)allowance.Spread.Picometres * allowance.Spread.Picometres * times;
        rungs.Add(new Rung(operation, taken, size, Spread));
        return this;
    }

    /// <summary>A saw cut into equal layers: each keeps its share of what the kerfs leave, rounded down.</summary>
    public LadderBuilder SawIntoLayers(Operation operation, int layers, Length kerf)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(layers, 1);
        var layer = (size - (kerf * (layers - 1))).Divide(layers, Rounding.Down);
        rungs.Add(new Rung(operation, size - layer, layer, Spread));
        size = layer;
        return this;
    }

    /// <summary>Work to an exact size, whatever is there; the spread is gone afterwards because the size is set by the machine.</summary>
    public LadderBuilder WorkTo(Operation operation, Length target)
    {
        rungs.Add(new Rung(operation, size - target, target, Length.Zero));
        size = target;
        variance = 0;
        return this;
    }

    /// <summary>The finished ladder.</summary>
    public Ladder Build() => new(start, rungs.ToImmutable());
}
