namespace Scrapwright.Core.Plans;

/// <summary>What a level of the objective measures.</summary>
public enum LevelKind
{
    /// <summary>Gifts made, a gift of a higher priority outweighing all of lower ones together. Larger is better. Unit: weighted gifts.</summary>
    GiftsMade,

    /// <summary>Pairs of gifts in one circle that differ, wished species present less others beside them, parts wished mirrored, book-matched, alternating or with an accent whose panels all are. Larger is better. Unit: points.</summary>
    Looks,

    /// <summary>Rough volume cut out of the pile. Smaller is better. Unit: cubic millimetres, each cut rounded up.</summary>
    WoodUsed,

    /// <summary>Glue-ups, each a load of clamps. Smaller is better.</summary>
    ClampLoads,

    /// <summary>Strips that are used for the same as in the plan before; only in a plan that was made from another. Larger is better.</summary>
    StripsAsBefore,
}
