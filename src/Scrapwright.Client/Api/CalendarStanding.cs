namespace Scrapwright.Client.Api;

/// <summary>What the server has to say about a calendar.</summary>
public enum CalendarStanding
{
    /// <summary>There is none, and none was asked for.</summary>
    None,

    /// <summary>There is one, and it passed its audit.</summary>
    Dated,

    /// <summary>The work does not fit into the time there is; a calendar of before stays.</summary>
    Impossible,

    /// <summary>The time given ran out before there was one; a calendar of before stays.</summary>
    Unfinished,
}
