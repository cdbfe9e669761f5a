using Scrapwright.Cli.Output;
using Scrapwright.Core.Calendar.Worth;
using Scrapwright.Core.Plans;
using Scrapwright.Files;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>Weighs making against buying for the work of a plan.</summary>
internal sealed class WorthCommand(Terminal terminal) : Command<WorthSettings>
{
    /// <inheritdoc/>
    public override int Execute(CommandContext context, WorthSettings settings, CancellationToken cancellationToken)
    {
        var plan = FormerPlan.Read(settings.Plan);
        if (plan is not FileOutcome<Plan>.Read { Content: { } content }) return Refusal.Write(terminal, plan);
        var request = new WorthRequest { Plan = content, HourWorth = content.Request.Shop.HourWorth };
        if (settings.Workshop is { } folder)
        {
            var workshop = WorkshopFolder.Read(folder);
            if (workshop is not FileOutcome<PlanRequest>.Read { Content: { } now }) return Refusal.Write(terminal, workshop);
            var notes = WorkshopFolder.ReadNotes(folder);
            if (notes is not FileOutcome<WorkshopNotes>.Read { Content: { } noted }) return Refusal.Write(terminal, notes);
            request = request with { HourWorth = now.Shop.HourWorth, Prices = noted.Prices, Jigs = noted.Jigs, Times = noted.Times };
        }

        foreach (var line in WorthText.Lines(WorthAnswer.Of(request), content)) terminal.Out.WriteLine(line);
        return ExitCodes.Done;
    }
}
