namespace Scrapwright.Core.Shops;

/// <summary>A machine or a place where work is done.</summary>
public enum Station
{
    /// <summary>The table saw with fence or sled.</summary>
    TableSaw,

    /// <summary>The jointer.</summary>
    Jointer,

    /// <summary>The thickness planer.</summary>
    Planer,

    /// <summary>The bandsaw.</summary>
    Bandsaw,

    /// <summary>Hand plane, hand saw, shooting board: where a piece is too small for a machine.</summary>
    HandTools,

    /// <summary>Bench with clamps and glue.</summary>
    Clamps,

    /// <summary>The drill press.</summary>
    DrillPress,

    /// <summary>The router.</summary>
    Router,

    /// <summary>Bench for fitting and assembly.</summary>
    Bench,

    /// <summary>Sanding.</summary>
    Sanding,

    /// <summary>Finishing: oil, wax, varnish.</summary>
    Finishing,
}
