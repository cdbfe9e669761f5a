using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;
using Scrapwright.Core.Wood;

namespace Scrapwright.Files;

/// <summary>What the numbers of a shop must keep to.</summary>
internal static class ShopRules
{
    internal static void Check(Shop shop, JsonPlaces places, ProblemList problems)
    {
        Require(Enum.IsDefined(shop.Unit), "unit", $"{shop.Unit}", "inch or millimetre");
        Require(shop.Denominator is 2 or 4 or 8 or 16 or 32 or 64, "denominator", $"{shop.Denominator}", "2, 4, 8, 16, 32 or 64");
        Require(shop.ConfidencePercent is >= 50 and <= 99, "confidencePercent", $"{shop.ConfidencePercent}", "a whole number from 50 to 99");
        Require(shop.MinimumContrast is >= 0 and <= 50, "minimumContrast", $"{shop.MinimumContrast}", "a number from 0 to 50");
        foreach (var (path, size) in PositiveSizes(shop)) Require(size.IsPositive, path, Text(size), "a size above zero");
        foreach (var (path, size) in OtherSizes(shop)) Require(!size.IsNegative, path, Text(size), "a size of zero or more");
        for (var i = 0; i < shop.Clamps.Length; i++) Require(shop.Clamps[i].Count >= 0, $"clamps[{i}].count", $"{shop.Clamps[i].Count}", "zero or more");
        for (var i = 0; i < shop.Rods.Length; i++)
        {
            Require(shop.Rods[i].OnHand >= 0, $"rods[{i}].onHand", $"{shop.Rods[i].OnHand}", "zero or more");
            var species = shop.Rods[i].Species;
            Require(SpeciesTable.All.Any(known => known.Key == species), $"rods[{i}].species", species, FileMessages.ASpecies(KeysNear(species)));
        }

        for (var i = 0; i < shop.Times.Length; i++)
        {
            var time = shop.Times[i];
            Require(time is { SetUpMinutes: >= 0, EachMinutes: >= 0, WaitMinutes: >= 0 }, $"times[{i}]", $"{time.SetUpMinutes}, {time.EachMinutes}, {time.WaitMinutes}", "minutes of zero or more");
            Require(shop.Times.Take(i).All(other => other.Operation != time.Operation), $"times[{i}].operation", $"{time.Operation}", "each operation only once");
        }

        void Require(bool holds, string path, string found, string expected)
        {
            if (holds) return;
            var (line, column) = places.Of("$." + path);
            problems.Add(line, column, $"{path}: {found}", expected);
        }
    }

    private static string Text(Length size) => size.ToExactText(LengthUnit.Millimetre);

    private static IEnumerable<string> KeysNear(string species) =>
        SpeciesTable.Find(species) is { } found ? [found.Key] : SpeciesTable.Suggest(species).Select(near => near.Key);

    private static IEnumerable<(string, Length)> PositiveSizes(Shop shop) =>
    [
        ("jointer.maximumWidth", shop.Jointer.MaximumWidth), ("planer.maximumWidth", shop.Planer.MaximumWidth),
        ("planer.maximumThickness", shop.Planer.MaximumThickness), ("tableSaw.kerf", shop.TableSaw.Kerf),
        ("tableSaw.maximumDepth", shop.TableSaw.MaximumDepth), ("tableSaw.maximumCrosscut", shop.TableSaw.MaximumCrosscut),
        ("bandsaw.kerf", shop.Bandsaw.Kerf), ("bandsaw.resawHeight", shop.Bandsaw.ResawHeight),
        ("drillPress.throat", shop.DrillPress.Throat), ("drillPress.stroke", shop.DrillPress.Stroke), ("clampSpacing", shop.ClampSpacing),
        .. shop.Clamps.Select((clamp, i) => ($"clamps[{i}].reach", clamp.Reach)),
        .. shop.DrillBits.Select((bit, i) => ($"drillBits[{i}]", bit)),
        .. shop.Rods.Select((rod, i) => ($"rods[{i}].diameter", rod.Diameter)),
        .. shop.Rods.Select((rod, i) => ($"rods[{i}].length", rod.Length)),
    ];

    private static IEnumerable<(string, Length)> OtherSizes(Shop shop) =>
    [
        ("jointer.minimumLength", shop.Jointer.MinimumLength), ("jointer.minimumThickness", shop.Jointer.MinimumThickness),
        ("jointer.minimumWidth", shop.Jointer.MinimumWidth), ("planer.minimumLength", shop.Planer.MinimumLength),
        ("planer.minimumThickness", shop.Planer.MinimumThickness), ("tableSaw.minimumRipLength", shop.TableSaw.MinimumRipLength),
        ("tableSaw.minimumRipWidth", shop.TableSaw.MinimumRipWidth), ("bandsaw.minimumLength", shop.Bandsaw.MinimumLength),
        ("keepLength", shop.KeepLength), ("keepWidth", shop.KeepWidth), ("keepThickness", shop.KeepThickness), ("narrowestStrip", shop.NarrowestStrip),
        .. Allowances(shop.Allowances).SelectMany(entry => new[]
        {
            ($"allowances.{entry.Name}.mean", entry.Allowance.Mean), ($"allowances.{entry.Name}.spread", entry.Allowance.Spread),
        }),
    ];

    private static IEnumerable<(string Name, Allowance Allowance)> Allowances(Allowances all) =>
    [
        ("faceJoint", all.FaceJoint), ("facePlane", all.FacePlane), ("edgeJoint", all.EdgeJoint), ("panelFlatten", all.PanelFlatten),
        ("resawCleanUp", all.ResawCleanUp), ("sand", all.Sand), ("endTrim", all.EndTrim), ("widthTrim", all.WidthTrim),
    ];
}
