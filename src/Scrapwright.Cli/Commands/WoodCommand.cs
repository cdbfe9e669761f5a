using Scrapwright.Cli.Output;
using Scrapwright.Core.Wood;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>Says what the bench wants to know of a wood, or of two side by side.</summary>
internal sealed class WoodCommand(Terminal terminal) : Command<WoodSettings>
{
    /// <inheritdoc/>
    public override int Execute(CommandContext context, WoodSettings settings, CancellationToken cancellationToken)
    {
        if (SpeciesTable.Find(settings.Species) is not { } species) return Refuse("SPECIES", settings.Species);
        if (settings.Other is null) return Say(WoodText.Lines(species, settings.LengthUnit));
        return SpeciesTable.Find(settings.Other) is { } other ? Say(WoodText.Lines(species, other, settings.LengthUnit)) : Refuse("OTHER", settings.Other);
    }

    private int Say(IEnumerable<string> lines)
    {
        foreach (var line in lines) terminal.Out.WriteLine(line);
        return ExitCodes.Done;
    }

    private int Refuse(string argument, string found)
    {
        var near = string.Join(" or ", SpeciesTable.Suggest(found).Select(species => species.Name));
        return Refusal.Write(terminal, argument, found, near.Length == 0 ? "the name of a wood" : $"the name of a wood; maybe {near}");
    }
}
