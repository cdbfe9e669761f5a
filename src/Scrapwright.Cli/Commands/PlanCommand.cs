using Scrapwright.Cli.Output;
using Scrapwright.Core.Plans;
using Scrapwright.Files;
using Scrapwright.Planning;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>Plans the gifts of a workshop folder.</summary>
internal sealed class PlanCommand(Terminal terminal) : AsyncCommand<PlanSettings>
{
    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, PlanSettings settings, CancellationToken cancellationToken)
    {
        switch (ReadFolder.Read(settings.Folder, Day.Of(settings.Start)))
        {
            case FileOutcome<ReadFolder>.Refused refused:
                return Refusal.Write(terminal, refused.Problems, refused.More);
            case FileOutcome<ReadFolder>.Read read:
                foreach (var doubt in read.Doubts) await terminal.Error.WriteLineAsync($"{doubt}");
                var request = settings.Name is null ? read.Content.Dated : read.Content.Dated with { Workshop = settings.Name };
                Plan? former = null;
                if (settings.From is { } from)
                {
                    var outcome = FormerPlan.Read(from);
                    if (outcome is FileOutcome<Plan>.Refused unread) return Refusal.Write(terminal, unread.Problems, unread.More);
                    former = (outcome as FileOutcome<Plan>.Read)?.Content;
                }

                try
                {
                    OutFolder.Try(settings.Out);
                    return await PlanAsync(request, former, read.Content, settings);
                }
                catch (Exception error) when (error is IOException or UnauthorizedAccessException)
                {
                    return Refusal.Write(terminal, settings.Out, error.Message, "a folder that can be written to");
                }

            default:
                throw new InvalidOperationException("An outcome of another kind.");
        }
    }

    private async Task<int> PlanAsync(PlanRequest request, Plan? former, ReadFolder folder, PlanSettings settings)
    {
        using var stop = new StopSignal();
        var ticker = new PlanTicker(terminal);
        var limits = new PlanLimits { Seconds = settings.Seconds, Seed = settings.Seed, Deterministic = settings.Repeatable };
        var outcome = await ticker.ShowAsync(Planner.PlanAsync(request, limits, former, ticker, stop.Token), settings.Seconds);
        switch (outcome)
        {
            case PlanOutcome.Planned planned:
                var written = Write(planned.Plan, settings);
                foreach (var line in PlanText.Lines(planned.Plan).Concat(GivenText.HadBefore(folder))) await terminal.Out.WriteLineAsync(line);
                if (former is not null)
                {
                    foreach (var line in PlanText.Changes(PlanChanges.Between(former, planned.Plan))) await terminal.Out.WriteLineAsync(line);
                }

                await terminal.Out.WriteLineAsync($"Written: {string.Join(", ", written)}");
                break;
            case PlanOutcome.Impossible { Unmade.IsEmpty: true }:
                await terminal.Out.WriteLineAsync("There is nothing to plan: gifts.csv has no gift. Nothing was written.");
                break;
            case PlanOutcome.Impossible impossible:
                await terminal.Out.WriteLineAsync($"{request.Workshop}: no gift can be made. Nothing was written.");
                foreach (var line in PlanText.Unmade(impossible.Unmade, request.Shop)) await terminal.Out.WriteLineAsync(line);
                break;
            case PlanOutcome.Cancelled:
                await terminal.Out.WriteLineAsync("Stopped before there was a plan. Nothing was written.");
                break;
        }

        return ExitCodes.Of(outcome);
    }

    private static List<string> Write(Plan plan, PlanSettings settings)
    {
        string Place(string name) => Path.Combine(settings.Out, name);
        var paper = Printing.Paper(settings.Paper, plan.Request.Shop);
        List<string> written = [Place("plan.json"), Place("sheets.pdf")];
        using var files = new NewFiles();
        Printing.AddPlan(files, written[0], plan);
        Printing.AddSheets(files, written[1], plan, paper);
        var labels = Place("labels.pdf");
        if (Printing.AddLabels(files, labels, plan, paper)) written.Add(labels);
        // Labels of an earlier plan would be stuck on the wrong wood.
        else File.Delete(labels);
        files.Keep();
        return written;
    }
}
