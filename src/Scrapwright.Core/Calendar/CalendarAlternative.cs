using System.Collections.Immutable;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Calendar;

/// <summary>What could be done when time is short. Only a proposal: nothing is changed by it.</summary>
public sealed record CalendarAlternative
{
    /// <summary>What kind of thing.</summary>
    public required OtherwiseKind Kind { get; init; }

    /// <summary>The question to the maker, in words of the shop.</summary>
    public required string Question { get; init; }

    /// <summary>The hours it would take; null when it is not the hours that are otherwise.</summary>
    public WorkHours? Hours { get; init; }

    /// <summary>The gift that is given up; empty for none.</summary>
    public string LeftOut { get; init; } = "";

    /// <summary>Its priority, 1 to 9; null when no gift is given up.</summary>
    public int? LeftOutPriority { get; init; }

    /// <summary>Labels of gifts that are late and would be in time.</summary>
    public required ImmutableArray<string> InTime { get; init; }

    /// <summary>Labels of gifts that would be late, those among them that are in time now.</summary>
    public required ImmutableArray<string> LateThen { get; init; }
}
