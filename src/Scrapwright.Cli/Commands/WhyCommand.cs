using Scrapwright.Cli.Output;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Why;
using Scrapwright.Files;
using Scrapwright.Planning;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>Says why a plan is as it is, by planning once more with one thing otherwise.</summary>
internal sealed class WhyCommand(Terminal terminal) : AsyncCommand<WhySettings>
{
    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, WhySettings settings, CancellationToken cancellationToken) => PlanReading.Read(settings.Plan) switch
    {
        FileOutcome<Plan>.Read read => await AnswerAsync(read.Content, settings, cancellationToken),
        FileOutcome<Plan>.Refused refused => Refusal.Write(terminal, refused.Problems, refused.More),
        _ => throw new InvalidOperationException("An outcome of another kind."),
    };

    private async Task<int> AnswerAsync(Plan plan, WhySettings settings, CancellationToken cancellationToken)
    {
        var findings = PlanAudit.Check(plan);
        Findings.Write(terminal.Error, findings);
        if (!findings.IsEmpty) return ExitCodes.Of(findings);

        // A gift with one glued-up part needs no more words.
        var parts = plan.GlueUps.SelectMany(g => g.PartsOf(settings.Gift)).Distinct().ToArray();
        var part = settings.Part.Length > 0 || settings.Kind == WhyKind.NotMade || parts.Length != 1 ? settings.Part : parts[0];
        var question = new WhyQuestion(settings.Kind, settings.Gift, part, settings.Offcut);
        if (WhyFault.Of(plan, question) is { } fault)
        {
            await terminal.Error.WriteLineAsync($"{settings.Plan}: {fault}");
            return ExitCodes.BadInput;
        }

        var answer = await Explainer.AnswerAsync(plan, question, new PlanLimits { Seconds = settings.Seconds }, cancellationToken);
        await terminal.Out.WriteLineAsync(WhyWords.Say(answer, PlanIndex.Of(plan)));
        return ExitCodes.Done;
    }
}
