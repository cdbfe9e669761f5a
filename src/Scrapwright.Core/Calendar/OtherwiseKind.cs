namespace Scrapwright.Core.Calendar;

/// <summary>The one thing that is otherwise when a calendar is made once more to see what it would help.</summary>
public enum OtherwiseKind
{
    /// <summary>Somebody helps: one pair of hands more.</summary>
    Helper,

    /// <summary>One more evening in every week.</summary>
    WeeklyEvening,

    /// <summary>One more evening on one of the next seven days.</summary>
    OneEvening,

    /// <summary>Machines may run an hour longer.</summary>
    MachineHours,

    /// <summary>As many clamps of one kind again.</summary>
    Clamps,

    /// <summary>A glue that sets faster.</summary>
    Glue,

    /// <summary>A finish that dries faster, for all gifts that name none of their own.</summary>
    Finish,

    /// <summary>A finish that dries faster, for one gift.</summary>
    GiftFinish,

    /// <summary>One gift is made to another design, or has fewer pieces.</summary>
    OtherDesign,

    /// <summary>One gift is bought.</summary>
    BuyGift,

    /// <summary>The parts of one kind of a gift are bought.</summary>
    BuyPart,

    /// <summary>A jig is made first.</summary>
    MakeJig,

    /// <summary>A jig is bought.</summary>
    BuyJig,

    /// <summary>One gift is left out.</summary>
    LeaveOut,
}
