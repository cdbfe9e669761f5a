using Scrapwright.Core.Calendar;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;

namespace Scrapwright.Planning.Calendar.Advice;

/// <summary>A request with one thing otherwise.</summary>
/// <param name="Kind">What.</param>
/// <param name="What">What there is more of, in words.</param>
/// <param name="Question">The same as a question to the maker, without its question mark.</param>
/// <param name="Request">The request.</param>
/// <param name="LeftOut">The gift that is left out; null for none.</param>
internal sealed record CalendarVariant(OtherwiseKind Kind, string What, string Question, CalendarRequest Request, Gift? LeftOut = null)
{
    /// <summary>What is otherwise in the problem of the request; null for nothing. Gives null when that cannot be.</summary>
    internal Func<CalendarProblem, CalendarProblem?>? Change { get; init; }

    /// <summary>What is planned anew for it; null when the plan stays.</summary>
    internal PlanRequest? Replan { get; init; }

    /// <summary>True when it is a way out of a date only, and tells nothing about the shop.</summary>
    internal bool IsForDatesOnly => Kind is OtherwiseKind.OneEvening or OtherwiseKind.GiftFinish or OtherwiseKind.OtherDesign or OtherwiseKind.LeaveOut or OtherwiseKind.BuyGift or OtherwiseKind.BuyPart;
}
