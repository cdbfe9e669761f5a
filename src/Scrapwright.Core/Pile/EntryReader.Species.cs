using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Pile;

internal sealed partial class EntryReader
{
    private readonly List<(int Start, int End)> unknown = [];
    private Species? species;
    private int speciesStart, speciesEnd;

    // The longest run of words from the cursor that names a species.
    private bool ReadSpecies()
    {
        Span<int> ends = stackalloc int[8];
        var words = 0;
        for (var next = at; words < Math.Min(ends.Length, SpeciesTable.LongestNameInWords) && next < line.Length && char.IsLetter(line[next]);)
        {
            var end = next;
            while (end < line.Length && (char.IsLetter(line[end]) || line[end] is '\'' or '’')) end++;
            if (end < line.Length && char.IsAsciiDigit(line[end])) break;
            ends[words++] = end;
            next = end;
            while (next < line.Length && (char.IsWhiteSpace(line[next]) || line[next] is '-' or '.' || Peek(next) == '-')) next++;
        }

        for (var i = words - 1; i >= 0; i--)
        {
            if (SpeciesTable.Find(line.AsSpan(at, ends[i] - at)) is not { } found) continue;
            if (species is not null) Problem(at, ends[i], EntryMessages.OneSpecies);
            else (species, speciesStart, speciesEnd) = (found, at, ends[i]);
            at = ends[i];
            return true;
        }

        return false;
    }

    private void AddUnknown(int start, int end) => unknown.Add((start, end));

    /// <summary>Takes unknown words for a misspelt species where that is plain, and reports the rest.</summary>
    private void SettleSpecies()
    {
        var guessed = false;
        for (var i = 0; i < unknown.Count; i++)
        {
            var (start, end) = unknown[i];
            var last = i;
            while (last + 1 < unknown.Count && AreNeighbours(end, unknown[last + 1].Start)) end = unknown[++last].End;
            guessed |= SettleUnknown(start, end, i, last);
            i = last;
        }

        if (species is null)
        {
            if (!guessed && unknown.Count == 0) Problem(line.Length, line.Length, EntryMessages.ASpecies);
            return;
        }

        var word = line.AsSpan(speciesStart, speciesEnd - speciesStart);

        // "walnut" is the short name of one species; "oak" is that of none and means red oak by custom only.
        var shared = !guessed && !word.Equals(species.Name, StringComparison.OrdinalIgnoreCase) && !SpeciesTable.Alternatives(word.ToString()).IsEmpty;
        Reading(speciesStart, speciesEnd, EntryPart.Species, species.Name, guessed || shared);
    }

    private bool SettleUnknown(int start, int end, int first, int last)
    {
        // "hrad maple": the known word behind or before belongs to it.
        var from = species is not null && AreNeighbours(speciesEnd, start) ? speciesStart : start;
        var to = species is not null && AreNeighbours(end, speciesStart) ? speciesEnd : end;
        var near = NearestSpecies.To(line[from..to]);
        if (near.Certain is { } meant && (species is null || from != start || to != end))
        {
            (species, speciesStart, speciesEnd) = (meant, from, to);
            return true;
        }

        for (var i = first; i <= last; i++)
        {
            var (wordStart, wordEnd) = unknown[i];
            var nearWord = first == last ? near : NearestSpecies.To(line[wordStart..wordEnd]);
            if (species is null && nearWord.Certain is { } certain)
            {
                (species, speciesStart, speciesEnd) = (certain, wordStart, wordEnd);
                ReportRest(first, last, i);
                return true;
            }
        }

        if (species is null && (near.Names.Length > 0 || first == last)) Problem(start, end, EntryMessages.ASpecies, near.Names.AsSpan());
        else ReportRest(first, last, -1);
        return false;
    }

    private void ReportRest(int first, int last, int except)
    {
        for (var i = first; i <= last; i++)
        {
            if (i == except) continue;
            var (start, end) = unknown[i];
            var near = species is null ? NearestSpecies.To(line[start..end]).Names : [];
            Problem(start, end, species is null ? EntryMessages.ASpecies : EntryMessages.AKnownWord, near.AsSpan());
        }
    }

    private bool AreNeighbours(int end, int start)
    {
        if (end > start) return false;
        for (var i = end; i < start; i++)
        {
            if (!char.IsWhiteSpace(line[i]) && line[i] != '-') return false;
        }

        return true;
    }
}
