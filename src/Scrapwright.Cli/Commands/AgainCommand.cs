using System.Collections.Immutable;
using System.Text;
using Scrapwright.Cli.Output;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans.Ideas;
using Scrapwright.Files;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>Rows for gifts.csv: for everybody who got something last time, something they have not had.</summary>
internal sealed class AgainCommand(Terminal terminal) : Command<AgainSettings>
{
    /// <inheritdoc/>
    public override int Execute(CommandContext context, AgainSettings settings, CancellationToken cancellationToken)
    {
        switch (ReadFolder.Read(settings.Folder))
        {
            case FileOutcome<ReadFolder>.Refused refused:
                return Refusal.Write(terminal, refused.Problems, refused.More);
            case FileOutcome<ReadFolder>.Read { Content: var folder }:
                if (folder.Years.FindOccasion(settings.Occasion) is { } occasion) return Propose(folder, occasion, settings);
                return Refusal.Write(terminal, OccasionsFile.Name, settings.Occasion, folder.Years.Occasions.IsEmpty ? "an occasion; there is none" : $"one of {string.Join(", ", folder.Years.Occasions.Select(o => o.Name))}");
            default:
                throw new InvalidOperationException("An outcome of another kind.");
        }
    }

    private int Propose(ReadFolder folder, Occasion occasion, AgainSettings settings)
    {
        var proposals = SameAgain.For(folder.Listed, folder.Years, occasion);
        if (proposals.IsEmpty) return Refusal.Write(terminal, GivenFile.Name, "", $"what was given on {occasion.Name} before");
        foreach (var line in proposals.SelectMany(Lines)) terminal.Error.WriteLine(line);
        ImmutableArray<Gift> gifts = [.. proposals.Where(p => p.OnList.IsEmpty && !p.Choices.IsEmpty).Select(p => p.Choices[0].Gift)];
        if (gifts.IsEmpty) return ExitCodes.NotAll;
        var rows = GiftsFile.Write(gifts);
        if (settings.Out is not { } file)
        {
            terminal.Out.Write(rows);
            return ExitCodes.Done;
        }

        try
        {
            // A new file only: nobody loses a list over a slip of the hand.
            using var stream = new FileStream(file, FileMode.CreateNew, FileAccess.Write);
            stream.Write(Encoding.UTF8.GetBytes(rows));
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return Refusal.Write(terminal, file, error.Message, "a new file that can be written");
        }

        terminal.Out.WriteLine($"Written: {file}. Copy its rows to {GiftsFile.Name}.");
        return ExitCodes.Done;
    }

    private static IEnumerable<string> Lines(AgainProposal proposal)
    {
        if (!proposal.OnList.IsEmpty)
        {
            yield return $"{proposal.Recipient}: on the list already: {string.Join(", ", proposal.OnList)}.";
            yield break;
        }

        if (proposal.Choices.IsEmpty)
        {
            yield return $"{proposal.Recipient}: has had everything there is, in all woods of the pile.";
            yield break;
        }

        var others = proposal.Choices.Skip(1).Select(choice => choice.Title).ToArray();
        yield return $"{proposal.Recipient}: {proposal.Choices[0].Title}, {(proposal.Choices[0].IsNewDesign ? "a design they have not had" : "in woods they have not had it in")}.{(others.Length == 0 ? "" : $" Or: {string.Join("; ", others)}.")}";
    }
}
