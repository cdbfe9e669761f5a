using Scrapwright.Cli.Output;
using Scrapwright.Files;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>Writes the example workshop.</summary>
internal sealed class DemoCommand(Terminal terminal) : Command<DemoSettings>
{
    /// <inheritdoc/>
    public override int Execute(CommandContext context, DemoSettings settings, CancellationToken cancellationToken)
    {
        if (string.IsNullOrWhiteSpace(settings.Folder)) return Refusal.Write(terminal, "FOLDER", "", "the name of a folder");
        if (File.Exists(settings.Folder)) return Refusal.Write(terminal, settings.Folder, "a file", "a folder");
        if (!settings.Force && OutFolder.IsTaken(settings.Folder))
        {
            return Refusal.Write(terminal, settings.Folder, "a folder with something in it", "an empty or a new folder, or --force to write there all the same");
        }

        try
        {
            WorkshopFolder.Write(settings.Folder, ExampleWorkshop.Listed, ExampleWorkshop.Hours, ExampleWorkshop.Years);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return Refusal.Write(terminal, settings.Folder, error.Message, "a folder that can be written to");
        }

        var request = ExampleWorkshop.Request;
        terminal.Out.WriteLine($"{ExampleWorkshop.Name}: {PlanText.Count(request.Pile.Sum(offcut => offcut.Count), "offcut")} and {PlanText.Count(request.Gifts.Length, "gift")} are in {settings.Folder}.");
        terminal.Out.WriteLine($"Next: scrapwright plan {settings.Folder} --out {Path.Combine(settings.Folder, "plan")}");
        return ExitCodes.Done;
    }
}
