namespace Scrapwright.Core.Plans;

/// <summary>What a change between two plans is about.</summary>
public enum ChangeKind
{
    /// <summary>A gift is made now, or is not any more.</summary>
    Gift,

    /// <summary>A glue-up is new, gone, or of other size.</summary>
    GlueUp,

    /// <summary>A strip comes from elsewhere, or goes elsewhere.</summary>
    Strip,

    /// <summary>The strips of a glue-up lie in another order.</summary>
    Order,

    /// <summary>A board for solid parts comes from elsewhere.</summary>
    Board,

    /// <summary>An offcut is cut now, or stays whole.</summary>
    Offcut,

    /// <summary>What the plan uses or needs in all.</summary>
    Amount,
}
