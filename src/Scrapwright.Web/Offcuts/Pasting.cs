using System.Collections.Immutable;
using Scrapwright.Client.Api;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Storage;

namespace Scrapwright.Web.Offcuts;

/// <summary>Adds the offcuts of many entry lines.</summary>
internal static class Pasting
{
    private const int MostCharacters = 1_000_000;
    private const int MostTries = 5;

    internal static async Task<IResult> AddAsync(PasteRequest paste, WorkshopStore store, CancellationToken cancellationToken)
    {
        if (paste.Text.Length > MostCharacters)
            return Answers.Refuse(StatusCodes.Status413PayloadTooLarge, "That is too much at once; nothing was added.", new FieldProblem("text", $"{paste.Text.Length} characters", $"at most {MostCharacters}"));

        var unit = (await store.GetShopAsync(cancellationToken)).Unit;
        for (var tries = 1; ; tries++)
        {
            var pile = await store.ListOffcutsAsync(cancellationToken);
            var (offcuts, refused) = Read(paste.Text, unit, pile.SelectMany(o => PileLabels.Claimed(o.Offcut)));
            if (offcuts.IsEmpty || (paste.AllOrNothing && !refused.IsEmpty)) return Answers.Ok(new PasteResult([], refused));
            switch (await store.AddOffcutsAsync(offcuts, cancellationToken))
            {
                case AddOutcome<StoredOffcut>.Added added:
                    return Answers.Ok(new PasteResult([.. added.Rows.Select(OffcutsApi.Row)], refused));
                // Somebody else took a label since the pile was read.
                case AddOutcome<StoredOffcut>.LabelsTaken taken when tries == MostTries:
                    return Answers.LabelsTaken("offcut", taken.Labels.Select(l => l.Label));
            }
        }
    }

    private static (ImmutableArray<NewOffcut> Offcuts, ImmutableArray<LineProblem> Refused) Read(string text, LengthUnit unit, IEnumerable<string> takenLabels)
    {
        var outcome = EntryLines.Parse(text, unit, takenLabels);
        var offcuts = ImmutableArray.CreateBuilder<NewOffcut>();
        var refused = outcome is EntryLinesOutcome.SomeNotUnderstood some ? some.Refused.Select(Problem).ToList() : [];
        foreach (var line in outcome.Lines)
        {
            var offcut = line.Outcome.Offcut;
            if (OffcutChecks.Of(new OffcutEntry(offcut, unit)) is [var wrong, ..])
                refused.Add(new(line.Line, EntryLine.Write(offcut, unit), 0, $"{wrong.Field["offcut.".Length..]} {wrong.Found}", wrong.Expected));
            else
                offcuts.Add(new(offcut, unit));
        }

        return (offcuts.ToImmutable(), [.. refused.OrderBy(r => r.Line)]);
    }

    private static LineProblem Problem(EntryLineRefused line)
    {
        var first = line.Problems[0];
        var suggestions = first.Suggestions.IsEmpty ? "" : $"; maybe {string.Join(" or ", first.Suggestions)}";
        return new(line.Line, line.Text, first.Column - 1, first.Found, first.Expected + suggestions);
    }
}
