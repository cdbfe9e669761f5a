using System.Collections.Immutable;
using Scrapwright.Client.Api;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Wood;
using Scrapwright.Files;
using Scrapwright.Web.Hosting;

namespace Scrapwright.Web.Offcuts;

/// <summary>What an offcut must be to be kept. Sizes that are unlikely but possible are asked back on the screen, not refused here.</summary>
internal static class OffcutChecks
{
    private const int MostAlike = 999;
    private const int LongestNote = 500;
    private const int MostDefects = 100;

    internal static ImmutableArray<FieldProblem> Of(OffcutEntry entry)
    {
        var checks = new ValueChecks();
        var (offcut, unit) = entry;
        checks.Require(offcut.Label.Length == 0 || PileLabels.IsValid(offcut.Label), "label", offcut.Label, $"1 to {PileLabels.LongestLabel} letters, digits or hyphens, or nothing");
        checks.Require(SpeciesTable.FindKey(offcut.Species) is not null, "species", offcut.Species, Expected(offcut.Species));
        checks.Positive("length", offcut.Length, unit);
        checks.Positive("width", offcut.Width, unit);
        checks.Positive("thickness", offcut.Thickness, unit);
        checks.Within("count", offcut.Count, 1, MostAlike);
        checks.NotNegative("cup", offcut.Cup, unit);
        checks.NotNegative("bow", offcut.Bow, unit);
        checks.NotNegative("twist", offcut.Twist, unit);
        checks.Text("note", offcut.Note, LongestNote);
        checks.Require(offcut.Defects.Length <= MostDefects, "defects", $"{offcut.Defects.Length}", $"at most {MostDefects}");
        for (var i = 0; i < offcut.Defects.Length; i++)
        {
            var defect = offcut.Defects[i];
            checks.Require(
                !defect.From.IsNegative && defect.To >= defect.From && defect.To <= offcut.Length,
                $"defects[{i}]", $"{defect.From.ToExactText(unit)} to {defect.To.ToExactText(unit)}", $"a stretch within 0 to {offcut.Length.ToExactText(unit)}");
            checks.Require(
                defect.Across is not { } across || (!across.From.IsNegative && across.To >= across.From && across.To <= offcut.Width),
                $"defects[{i}].across", $"{defect.Across?.From.ToExactText(unit)} to {defect.Across?.To.ToExactText(unit)}", $"a stretch within 0 to {offcut.Width.ToExactText(unit)}");
        }

        return checks.Problems.AsFields("offcut.");
    }

    private static string Expected(string species)
    {
        var nearest = SpeciesTable.Suggest(species).Take(3).Select(s => s.Key).ToList();
        return nearest.Count == 0 ? "the key of a species, such as black-walnut" : $"the key of a species, maybe {string.Join(" or ", nearest)}";
    }
}
