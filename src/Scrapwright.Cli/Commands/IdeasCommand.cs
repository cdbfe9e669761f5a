using Scrapwright.Cli.Output;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Ideas;
using Scrapwright.Files;
using Scrapwright.Planning;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>Says what else the pile gives, where an offcut serves best, or what is worth buying.</summary>
internal sealed class IdeasCommand(Terminal terminal) : AsyncCommand<IdeasSettings>
{
    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, IdeasSettings settings, CancellationToken cancellationToken)
    {
        switch (ReadFolder.Read(settings.Folder))
        {
            case FileOutcome<ReadFolder>.Refused refused:
                return Refusal.Write(terminal, refused.Problems, refused.More);
            case FileOutcome<ReadFolder>.Read read:
                foreach (var doubt in read.Doubts) await terminal.Error.WriteLineAsync($"{doubt}");
                Plan? plan = null;
                if (settings.From is { } from)
                {
                    var outcome = FormerPlan.Read(from);
                    if (outcome is FileOutcome<Plan>.Refused unread) return Refusal.Write(terminal, unread.Problems, unread.More);
                    plan = (outcome as FileOutcome<Plan>.Read)?.Content;
                }

                return await AnswerAsync(read.Content, plan, settings);
            default:
                throw new InvalidOperationException("An outcome of another kind.");
        }
    }

    private async Task<int> AnswerAsync(ReadFolder folder, Plan? plan, IdeasSettings settings)
    {
        var workshop = folder.Dated;
        var question = settings.Question with { Had = folder.Years.DesignsHadBy(settings.For) };
        if (IdeasFault.Of(workshop, question) is { } fault)
        {
            await terminal.Error.WriteLineAsync($"{settings.Folder}: {fault}");
            return ExitCodes.BadInput;
        }

        using var stop = new StopSignal();
        var limits = new PlanLimits { Deterministic = settings.Repeatable };
        var answer = await IdeaMaker.AnswerAsync(workshop, plan, question, limits, new IdeasTicker(terminal), stop.Token);
        foreach (var line in IdeasText.Lines(answer, workshop)) await terminal.Out.WriteLineAsync(line);
        return ExitCodes.Of(answer);
    }
}
