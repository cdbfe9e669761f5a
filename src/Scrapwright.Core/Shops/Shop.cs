using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Shops;

/// <summary>The stations with their limits, kerfs and allowances; clamps; bits; rods; habits. Every property has a plausible default for a small shop.</summary>
public sealed record Shop
{
    /// <summary>Unit the maker reads and writes in; bare numbers are in it.</summary>
    public LengthUnit Unit { get; init; } = LengthUnit.Inch;

    /// <summary>Finest fraction shown: 2, 4, 8, 16, 32 or 64.</summary>
    public int Denominator { get; init; } = 32;

    /// <summary>The jointer.</summary>
    public Jointer Jointer { get; init; } = new();

    /// <summary>The planer.</summary>
    public Planer Planer { get; init; } = new();

    /// <summary>The table saw.</summary>
    public TableSaw TableSaw { get; init; } = new();

    /// <summary>The bandsaw.</summary>
    public Bandsaw Bandsaw { get; init; } = new();

    /// <summary>The drill press.</summary>
    public DrillPress DrillPress { get; init; } = new();

    /// <summary>What each kind of work takes away.</summary>
    public Allowances Allowances { get; init; } = new();

    /// <summary>The clamps on the rack.</summary>
    public ImmutableArray<ClampKind> Clamps { get; init; } = ShopDefaults.Clamps;

    /// <summary>Distance between clamps along a glue-up.</summary>
    public Length ClampSpacing { get; init; } = Length.FromInches(6);

    /// <summary>Drill bits by diameter.</summary>
    public ImmutableArray<Length> DrillBits { get; init; } = ShopDefaults.DrillBits;

    /// <summary>Router bits by name, as the maker calls them.</summary>
    public ImmutableArray<string> RouterBits { get; init; } = ShopDefaults.RouterBits;

    /// <summary>Saw blades by name.</summary>
    public ImmutableArray<string> Blades { get; init; } = ShopDefaults.Blades;

    /// <summary>Dowel rods.</summary>
    public ImmutableArray<RodStock> Rods { get; init; } = ShopDefaults.Rods;

    /// <summary>How long each kind of work takes.</summary>
    public ImmutableArray<WorkTime> Times { get; init; } = ShopDefaults.Times;

    /// <summary>Whether the maker works pieces that are too small for a machine by hand or on a carrier sled. When false such pieces are not used.</summary>
    public bool WorksSmallPiecesByHand { get; init; } = true;

    /// <summary>Narrowest strip, after its edges are jointed, that goes into a glue-up.</summary>
    public Length NarrowestStrip { get; init; } = Length.FromInches(1, 2);

    /// <summary>A leftover shorter than this goes to the scrap bin.</summary>
    public Length KeepLength { get; init; } = Length.FromInches(4);

    /// <summary>A leftover narrower than this goes to the scrap bin.</summary>
    public Length KeepWidth { get; init; } = Length.FromInches(3, 4);

    /// <summary>A leftover thinner than this goes to the scrap bin.</summary>
    public Length KeepThickness { get; init; } = Length.FromInches(1, 4);

    /// <summary>Chance asked for that a panel holds its size, per cent, 50 to 99.</summary>
    public int ConfidencePercent { get; init; } = 95;

    /// <summary>Least colour difference between neighbouring strips, CIEDE2000; 0 to 50.</summary>
    public double MinimumContrast { get; init; } = 8;

    /// <summary>The air where the shop's wood stands: key of a climate in the table, or the name of one of <see cref="OwnClimates"/>.</summary>
    public string Climate { get; init; } = ClimateTable.DefaultKey;

    /// <summary>Climates the maker measured, to be chosen for the shop and for recipients.</summary>
    public ImmutableArray<OwnClimate> OwnClimates { get; init; } = [];

    /// <summary>Moisture content of the pile by a meter. [%], 4 to 30; null when it lies in the shop and has settled.</summary>
    public double? PileMoisturePercent { get; init; }

    /// <summary>What an hour of the maker's time is worth to the maker; null when nobody said. Plans do not depend on it.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public HourWorth? HourWorth { get; init; }

    /// <summary>Key of the glue used.</summary>
    public string Glue { get; init; } = "white-glue";

    /// <summary>Key of the finish used where a gift does not name its own.</summary>
    public string Finish { get; init; } = "drying-oil";

    /// <summary>The grits on hand and how far apart two of them may stand.</summary>
    public Abrasives Abrasives { get; init; } = new();
}
