using Scrapwright.Cli.Output;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Pile;
using Scrapwright.Files;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>Says what was understood of a workshop folder.</summary>
internal sealed class CheckCommand(Terminal terminal) : Command<CheckSettings>
{
    /// <inheritdoc/>
    public override int Execute(CommandContext context, CheckSettings settings, CancellationToken cancellationToken)
    {
        switch (ReadFolder.Read(settings.Folder, Day.Of(settings.Start)))
        {
            case FileOutcome<ReadFolder>.Refused refused:
                return Refusal.Write(terminal, refused.Problems, refused.More);
            case FileOutcome<ReadFolder>.Read read:
                foreach (var doubt in read.Doubts) terminal.Error.WriteLine($"{doubt}");
                return Say(read.Content);
            default:
                throw new InvalidOperationException("An outcome of another kind.");
        }
    }

    private int Say(ReadFolder folder)
    {
        var request = folder.Listed;
        terminal.Out.WriteLine($"{request.Workshop}: {PlanText.Count(request.Pile.Sum(offcut => offcut.Count), "offcut")}, {PlanText.Count(request.Gifts.Length, "gift")}.");
        terminal.Out.WriteLine("Pile:");
        foreach (var offcut in request.Pile) terminal.Out.WriteLine($"  {EntryLine.Write(offcut, request.Shop.Unit)}");
        terminal.Out.WriteLine("Gifts:");
        var designs = request.DeriveDesigns();
        foreach (var line in designs.SelectMany(Lines)) terminal.Out.WriteLine($"  {line}");
        foreach (var line in GivenText.Occasions(folder).Concat(GivenText.HadBefore(folder))) terminal.Out.WriteLine(line);
        return ExitCodes.Of(designs);
    }

    private static IEnumerable<string> Lines(GiftDesign design) => design.Outcome switch
    {
        DesignOutcome.Derived derived => [$"{design.Gift.Label}: {derived.Product.Summary}"],
        DesignOutcome.Refused refused => refused.Problems.Select(problem =>
            $"{design.Gift.Label}: {problem.Option}: {(problem.Found.Length == 0 ? "something is missing" : $"found “{problem.Found}”")}, expected {problem.Expected}"),
        _ => throw new InvalidOperationException("An outcome of another kind."),
    };
}
