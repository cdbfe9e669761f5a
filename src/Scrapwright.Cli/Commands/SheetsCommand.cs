using Scrapwright.Cli.Output;
using Scrapwright.Core.Plans;
using Scrapwright.Files;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>Prints a plan again. A plan that does not hold is not printed.</summary>
internal sealed class SheetsCommand(Terminal terminal) : Command<SheetsSettings>
{
    /// <inheritdoc/>
    public override int Execute(CommandContext context, SheetsSettings settings, CancellationToken cancellationToken) => PlanReading.Read(settings.Plan) switch
    {
        FileOutcome<Plan>.Read read => Print(read.Content, settings),
        FileOutcome<Plan>.Refused refused => Refusal.Write(terminal, refused.Problems, refused.More),
        _ => throw new InvalidOperationException("An outcome of another kind."),
    };

    private int Print(Plan plan, SheetsSettings settings)
    {
        var findings = PlanAudit.Check(plan);
        Findings.Write(terminal.Error, findings);
        if (!findings.IsEmpty) return ExitCodes.Of(findings);
        var paper = Printing.Paper(settings.Paper, plan.Request.Shop);
        try
        {
            using var files = new NewFiles();
            if (!settings.Labels)
            {
                Printing.AddSheets(files, settings.Out, plan, paper);
            }
            else if (!Printing.AddLabels(files, settings.Out, plan, paper))
            {
                terminal.Out.WriteLine("The plan has no glue-up, so there is nothing to label. Nothing was written.");
                return ExitCodes.NotAll;
            }

            files.Keep();
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return Refusal.Write(terminal, settings.Out, error.Message, "a file that can be written");
        }

        terminal.Out.WriteLine($"Written: {settings.Out}");
        return ExitCodes.Done;
    }
}
