using Scrapwright.Cli.Output;
using Scrapwright.Core.Plans;
using Scrapwright.Files;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>Checks a plan again.</summary>
internal sealed class AuditCommand(Terminal terminal) : Command<AuditSettings>
{
    /// <inheritdoc/>
    public override int Execute(CommandContext context, AuditSettings settings, CancellationToken cancellationToken) => PlanReading.Read(settings.Plan) switch
    {
        FileOutcome<Plan>.Read read => Audit(read.Content),
        FileOutcome<Plan>.Refused refused => Refusal.Write(terminal, refused.Problems, refused.More),
        _ => throw new InvalidOperationException("An outcome of another kind."),
    };

    private int Audit(Plan plan)
    {
        var findings = PlanAudit.Check(plan);
        if (findings.IsEmpty)
        {
            terminal.Out.WriteLine(
                $"The plan holds: {PlanText.Count(plan.Made.Length, "gift")}, {PlanText.Count(plan.GlueUps.Length, "glue-up")}, {PlanText.Count(plan.Steps.Length, "step")}, the wood of {PlanText.Count(plan.Ledger.Length - plan.Faced.Length, "offcut")} accounted for.");
        }

        Findings.Write(terminal.Out, findings);
        return ExitCodes.Of(findings);
    }
}
