using Scrapwright.Core.Pile;

namespace Scrapwright.Storage;

/// <summary>The labels that stand on wood: of each entry and of the single pieces it stands for, without regard to upper and lower case.</summary>
internal sealed class PileLabels
{
    private readonly HashSet<string> taken = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>The offcut with the next free label of its species, taken: the species' first letter and the least number of which no label is taken.</summary>
    public Offcut TakeNext(Offcut offcut)
    {
        var letter = char.ToUpperInvariant(offcut.Species.FirstOrDefault(char.IsAsciiLetter, 'x'));
        for (var number = 1; ; number++)
        {
            var labelled = offcut with { Label = $"{letter}{number}" };
            if (Take(labelled) is null) return labelled;
        }
    }

    /// <summary>Takes the labels of an offcut, or none of them: gives the first that is taken already, or null.</summary>
    public string? Take(Offcut offcut)
    {
        string[] labels = offcut.Count == 1 ? [offcut.Label] : [offcut.Label, .. offcut.Pieces().Select(p => p.Label)];
        if (labels.FirstOrDefault(taken.Contains) is { } found) return found;
        taken.UnionWith(labels);
        return null;
    }
}
