using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Milling;

/// <summary>Whether a station may meet a piece.</summary>
public abstract record StationRuling
{
    private StationRuling()
    {
    }

    /// <summary>Within every limit.</summary>
    public sealed record Allowed : StationRuling;

    /// <summary>Refused at the machine; to be worked another way.</summary>
    /// <param name="Way">How instead.</param>
    /// <param name="Limit">Which limit, in words.</param>
    /// <param name="Found">What the piece measures.</param>
    /// <param name="Expected">The limit.</param>
    public sealed record Instead(Workaround Way, string Limit, Length Found, Length Expected) : StationRuling;

    /// <summary>Refused, and no other way in this shop.</summary>
    /// <param name="Limit">Which limit, in words.</param>
    /// <param name="Found">What the piece measures.</param>
    /// <param name="Expected">The limit.</param>
    public sealed record Refused(string Limit, Length Found, Length Expected) : StationRuling;
}
