using System.Globalization;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Pile;

/// <summary>Gives offcuts labels that are free: initials of the species and the next number, such as W1, W2, HM1.</summary>
public sealed class LabelMaker
{
    private readonly HashSet<string> taken;
    private readonly Dictionary<string, int> last = new(StringComparer.Ordinal);

    /// <summary>A maker of labels that avoids some.</summary>
    /// <param name="taken">Labels in use; case does not matter.</param>
    public LabelMaker(IEnumerable<string> taken) => this.taken = new(taken, StringComparer.OrdinalIgnoreCase);

    /// <summary>The next free label for an offcut, which is then taken, and so are those of its single pieces.</summary>
    /// <param name="offcut">The offcut; its own label does not matter.</param>
    public string Next(Offcut offcut)
    {
        ArgumentNullException.ThrowIfNull(offcut);
        var initials = Initials(offcut.Species);
        var number = last.GetValueOrDefault(initials);
        while (true)
        {
            number++;
            var label = initials + number.ToString(CultureInfo.InvariantCulture);
            if (!TryTake(offcut with { Label = label })) continue;
            last[initials] = number;
            return label;
        }
    }

    /// <summary>Takes the label of an offcut and those of its single pieces; false, and nothing taken, when one of them is taken already.</summary>
    /// <param name="offcut">A labelled offcut.</param>
    public bool TryTake(Offcut offcut)
    {
        var labels = PileLabels.Claimed(offcut).ToList();
        if (labels.Exists(taken.Contains)) return false;
        taken.UnionWith(labels);
        return true;
    }

    /// <summary>The initials of a species' short name in capitals, at most three: <c>hard maple</c> gives HM.</summary>
    /// <param name="species">Key of the species; the key's own words when it is not in the table.</param>
    public static string Initials(string species)
    {
        ArgumentNullException.ThrowIfNull(species);
        var name = SpeciesTable.Find(species)?.Name ?? species;
        var initials = string.Concat(name.Split([' ', '-'], StringSplitOptions.RemoveEmptyEntries).Take(3).Select(word => char.ToUpperInvariant(word[0])));
        return initials.Length > 0 && initials.All(char.IsAsciiLetterUpper) ? initials : "P";
    }
}
