using Scrapwright.Core.Calendar;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Ideas;
using Scrapwright.Files;

namespace Scrapwright.Cli;

/// <summary>The one place where outcomes become exit codes.</summary>
internal static class ExitCodes
{
    /// <summary>Everything asked for was done.</summary>
    internal const int Done = 0;

    /// <summary>The input was understood, and the answer is no, or not all of it; the reasons were printed.</summary>
    internal const int NotAll = 1;

    /// <summary>The input was not understood, or a file could not be read or written; what was found and expected was printed.</summary>
    internal const int BadInput = 2;

    /// <summary>A fault of this program. 70 is EX_SOFTWARE of sysexits.h.</summary>
    internal const int Fault = 70;

    internal static int Of(PlanOutcome outcome) => outcome switch
    {
        PlanOutcome.Planned { Plan.Unmade.IsEmpty: true } => Done,
        PlanOutcome.Planned or PlanOutcome.Impossible or PlanOutcome.Cancelled => NotAll,
        _ => throw new ArgumentOutOfRangeException(nameof(outcome), outcome, "An outcome of another kind."),
    };

    internal static int Of(CalendarOutcome outcome) => outcome switch
    {
        CalendarOutcome.Dated dated => dated.Calendar.Gifts.Any(g => g.IsLate) ? NotAll : Done,
        CalendarOutcome.Impossible or CalendarOutcome.Unfinished => NotAll,
        _ => throw new ArgumentOutOfRangeException(nameof(outcome), outcome, "An outcome of another kind."),
    };

    internal static int Of(IdeasAnswer answer) => answer switch
    {
        { Question.Kind: IdeasKind.Purchase, Unmade.IsEmpty: true, NotTried.IsEmpty: true } => Done,
        _ => answer.Proposals.IsEmpty && answer.Uses.IsEmpty && answer.Purchases.All(p => p.Unlocks.IsEmpty) ? NotAll : Done,
    };

    internal static int Of(IReadOnlyCollection<AuditFinding> findings) => findings.Count == 0 ? Done : NotAll;

    internal static int Of(IEnumerable<GiftDesign> designs) => designs.All(design => design.Outcome is DesignOutcome.Derived) ? Done : NotAll;

    internal static int Of(EntryLinesOutcome outcome) => outcome is EntryLinesOutcome.AllUnderstood ? Done : BadInput;

    /// <param name="code">What the web program says: 0 when it was ended, anything else when it could not start.</param>
    internal static int OfServing(int code) => code == 0 ? Done : BadInput;

    internal static int Of(IReadOnlyCollection<FileProblem> problems) => problems.Count == 0 ? Done : BadInput;
}
