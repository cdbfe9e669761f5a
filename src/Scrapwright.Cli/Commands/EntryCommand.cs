using Scrapwright.Cli.Output;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Files;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>Turns entry lines into rows of <c>pile.csv</c>: the rows to the standard output, what needs a look to the standard error.</summary>
internal sealed class EntryCommand(Terminal terminal) : Command<EntrySettings>
{
    private const int MostCharacters = 4 * 1024 * 1024;

    /// <inheritdoc/>
    public override int Execute(CommandContext context, EntrySettings settings, CancellationToken cancellationToken)
    {
        var unit = settings.Unit == "mm" ? LengthUnit.Millimetre : LengthUnit.Inch;
        if ((settings.Line ?? ReadInput()) is not { } text) return Refusal.Write(terminal, "the standard input", "more than 4 MB", "entry lines");
        var outcome = EntryLines.Parse(text, unit, []);
        if (!outcome.Lines.IsEmpty) terminal.Out.Write(PileFile.Write(outcome.Lines.Select(line => line.Outcome.Offcut), unit));
        var lines = text.TrimStart('\uFEFF').ReplaceLineEndings("\n").Split('\n');
        foreach (var line in outcome.Lines)
        {
            foreach (var guess in line.Outcome.Readings.Where(reading => reading.Guessed))
            {
                terminal.Error.WriteLine($"line {line.Line}: took “{lines[line.Line - 1].Substring(guess.Start, guess.Length)}” for {guess.Text}");
            }

            foreach (var doubt in line.Outcome.Doubts) terminal.Error.WriteLine($"line {line.Line}: {doubt.Question}");
        }

        if (outcome is EntryLinesOutcome.SomeNotUnderstood some)
        {
            foreach (var refused in some.Refused)
            {
                foreach (var problem in refused.Problems) terminal.Error.WriteLine($"line {refused.Line}: {problem.Message}");
            }
        }

        return ExitCodes.Of(outcome);
    }

    private string? ReadInput()
    {
        var buffer = new char[MostCharacters + 1];
        var count = terminal.In.ReadBlock(buffer);
        return count > MostCharacters ? null : new string(buffer, 0, count);
    }
}
