using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Pile;

/// <summary>Many entry lines at once, as pasted.</summary>
public static class EntryLines
{
    /// <summary>Most lines that are read at once; the rest is refused as one.</summary>
    public const int MostLines = 5000;

    /// <summary>Reads every line that is not blank and does not begin with <c>//</c>; lines without a label get one.</summary>
    /// <param name="text">The lines, with any line ends.</param>
    /// <param name="bareUnit">Unit of numbers without one.</param>
    /// <param name="takenLabels">Labels already in the pile, as <see cref="PileLabels.Claimed"/> gives them.</param>
    public static EntryLinesOutcome Parse(string text, LengthUnit bareUnit, IEnumerable<string> takenLabels)
    {
        ArgumentNullException.ThrowIfNull(text);
        var labels = new LabelMaker(takenLabels);
        var read = new List<EntryLineRead>();
        var refused = new List<EntryLineRefused>();
        var number = 0;
        foreach (var line in text.AsSpan().TrimStart('\uFEFF').EnumerateLines())
        {
            number++;
            var content = line.TrimStart();
            if (content.IsEmpty || content.StartsWith("//")) continue;
            if (read.Count + refused.Count == MostLines)
            {
                refused.Add(new(number, "", [new(1, "", $"at most {MostLines} lines at once; this line and all behind it were not read", [])]));
                break;
            }

            switch (EntryLine.Parse(line.ToString(), bareUnit))
            {
                case EntryOutcome.Understood understood when understood.Label is null || labels.TryTake(understood.Offcut):
                    read.Add(new(number, understood));
                    break;
                case EntryOutcome.Understood understood:
                    refused.Add(new(number, line.ToString(), [LabelTaken(understood)]));
                    break;
                case EntryOutcome.NotUnderstood not:
                    refused.Add(new(number, line.ToString(), not.Problems));
                    break;
            }
        }

        // Labels are given last, so that none given takes one that is written further down.
        var lines = read.Select(line => line.Outcome.Label is null ? Labelled(line, labels) : line).ToImmutableArray();
        return refused.Count == 0
            ? new EntryLinesOutcome.AllUnderstood { Lines = lines }
            : new EntryLinesOutcome.SomeNotUnderstood { Lines = lines, Refused = [.. refused] };
    }

    private static EntryLineRead Labelled(EntryLineRead line, LabelMaker labels) => line with
    {
        Outcome = line.Outcome with { Offcut = line.Outcome.Offcut with { Label = labels.Next(line.Outcome.Offcut) } },
    };

    private static EntryProblem LabelTaken(EntryOutcome.Understood line)
    {
        var reading = line.Readings.First(reading => reading.Part == EntryPart.Label);
        return new(reading.Start + 1, line.Offcut.Label, EntryMessages.AFreeLabel, []);
    }
}
