using System.Globalization;
using Scrapwright.Cli.Output;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Files;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>Says who got what, or takes the gifts of an occasion from the list to what was given.</summary>
internal sealed class GivenCommand(Terminal terminal) : Command<GivenSettings>
{
    /// <inheritdoc/>
    public override int Execute(CommandContext context, GivenSettings settings, CancellationToken cancellationToken)
    {
        switch (ReadFolder.Read(settings.Folder))
        {
            case FileOutcome<ReadFolder>.Refused refused:
                return Refusal.Write(terminal, refused.Problems, refused.More);
            case FileOutcome<ReadFolder>.Read { Content: var folder }:
                return settings.Occasion is null ? List(folder, settings) : Give(folder, settings);
            default:
                throw new InvalidOperationException("An outcome of another kind.");
        }
    }

    private int List(ReadFolder folder, GivenSettings settings)
    {
        foreach (var line in GivenText.Lines(folder, settings.To)) terminal.Out.WriteLine(line);
        return ExitCodes.Done;
    }

    private int Give(ReadFolder folder, GivenSettings settings)
    {
        var outcome = HandingOver.Of(folder.Listed.Gifts, folder.Years, settings.Occasion!, Day.Of(settings.On), settings.Stay, folder.Today);
        if (outcome is not HandOver.Done done) return Refuse(outcome, folder, settings);
        var occasions = folder.Years.Occasions.Select(o => GiftYears.IsSame(o.Name, done.Occasion.Name) ? done.Occasion : o).ToArray();
        var files = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            [GivenFile.Name] = GivenFile.Write(folder.Years.Given.AddRange(done.Given)),
            [OccasionsFile.Name] = OccasionsFile.Write(occasions),
            [GiftsFile.Name] = GiftsFile.Write(done.Left),
        };

        // What was decided for gifts that are gone means nothing any more.
        if (!folder.Listed.Choices.AreNone) files[ChoicesFile.Name] = ChoicesFile.Write(ChoiceFaults.Sound(folder.Listed with { Gifts = done.Left }));
        try
        {
            WorkshopFolder.Write(settings.Folder, files);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return Refusal.Write(terminal, settings.Folder, error.Message, "a folder that can be written to");
        }

        terminal.Out.WriteLine($"{done.Occasion.Name}: {PlanText.Count(done.Given.Length, "gift")} given on {Text(done.Given[0].Date)}.");
        foreach (var given in done.Given) terminal.Out.WriteLine($"  {GivenText.Of(given, folder.Listed.Designs)}");
        terminal.Out.WriteLine(done.Occasion.Date > done.Given[0].Date && done.Occasion.Date > folder.Today ? $"It is next on {Text(done.Occasion.Date)}." : "It does not come back.");
        terminal.Out.WriteLine($"{PlanText.Count(done.Left.Length, "gift")} left on the list. The pile is as it was: take out of it what went into the gifts.");
        return ExitCodes.Done;
    }

    private int Refuse(HandOver outcome, ReadFolder folder, GivenSettings settings) => outcome switch
    {
        HandOver.NoOccasion none => Refusal.Write(
            terminal, OccasionsFile.Name, settings.Occasion!, none.Nearest.Length == 0 ? "an occasion; there is none" : $"an occasion such as {string.Join(", ", folder.Years.Occasions.Select(o => o.Name))}; maybe {none.Nearest}"),
        HandOver.NoGifts => Refusal.Write(terminal, GiftsFile.Name, "", $"at least one gift for {settings.Occasion} to give"),
        HandOver.TooEarly early => Refusal.Write(terminal, "--on", Text(early.Date), $"a day that has come; today is {Text(folder.Today)}"),
        HandOver.NoSuchGift gift => Refusal.Write(terminal, "--except", gift.Label, $"a gift for {settings.Occasion}{(gift.Nearest.Length == 0 ? "" : $"; maybe {gift.Nearest}")}"),
        HandOver.HoldsOne one => Refusal.Write(terminal, GiftsFile.Name, $"{one.Holder} holds {one.Inside}", "both to be given or both to stay"),
        _ => throw new InvalidOperationException("An outcome of another kind."),
    };

    private static string Text(DateOnly date) => date.ToString("dddd d MMMM yyyy", CultureInfo.InvariantCulture);
}
