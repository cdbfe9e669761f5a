using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Milling;

/// <summary>The stations' limits. Below a minimum the machine is refused; the ruling says which way round: hand tool, carrier sled, gang.</summary>
public static class StationRules
{
    /// <summary>Rules on working a piece of the given size.</summary>
    /// <param name="operation">What is to be done.</param>
    /// <param name="length">Length along the grain when it meets the station.</param>
    /// <param name="width">Width when it meets the station; for ripping, the narrowest strip cut.</param>
    /// <param name="thickness">Thickness when it leaves the station.</param>
    /// <param name="shop">The shop.</param>
    public static StationRuling Rule(Operation operation, Length length, Length width, Length thickness, Shop shop)
    {
        ArgumentNullException.ThrowIfNull(shop);
        var ruling = operation switch
        {
            Operation.FaceJoint => First(
                Least(length, shop.Jointer.MinimumLength, Workaround.HandTool, "shortest piece at the jointer"),
                Least(width, shop.Jointer.MinimumWidth, Workaround.HandTool, "narrowest piece at the jointer"),
                Least(thickness, shop.Jointer.MinimumThickness, Workaround.HandTool, "thinnest piece at the jointer"),
                Most(width, shop.Jointer.MaximumWidth, Workaround.HandTool, "widest face at the jointer")),
            Operation.EdgeJoint => First(
                Least(length, shop.Jointer.MinimumLength, Workaround.HandTool, "shortest piece at the jointer"),
                Least(width, shop.Jointer.MinimumWidth, Workaround.HandTool, "narrowest piece at the jointer")),
            Operation.FacePlane or Operation.CleanSawnFaces or Operation.PlaneToThickness or Operation.FlattenPanel or Operation.PlanePanel => First(
                Most(thickness, shop.Planer.MaximumThickness, Workaround.None, "thickest piece at the planer"),
                Most(width, shop.Planer.MaximumWidth, Workaround.HandTool, "widest piece at the planer"),
                Least(length, shop.Planer.MinimumLength, Workaround.CarrierSled, "shortest piece at the planer"),
                Least(thickness, shop.Planer.MinimumThickness, Workaround.CarrierSled, "thinnest piece at the planer")),
            Operation.Rip or Operation.TrimWidth => First(
                Most(thickness, shop.TableSaw.MaximumDepth, Workaround.None, "deepest cut at the table saw"),
                Least(length, shop.TableSaw.MinimumRipLength, Workaround.CarrierSled, "shortest piece ripped at the table saw"),
                Least(width, shop.TableSaw.MinimumRipWidth, Workaround.CarrierSled, "narrowest strip ripped at the table saw")),
            Operation.RoughCrosscut or Operation.CrosscutStrips or Operation.CrosscutBlanks => First(
                Most(width, shop.TableSaw.MaximumCrosscut, Workaround.HandTool, "widest crosscut on the sled"),
                Most(thickness, shop.TableSaw.MaximumDepth, Workaround.HandTool, "deepest cut at the table saw")),
            Operation.RoughRip => Least(length, shop.Bandsaw.MinimumLength, Workaround.HandTool, "shortest piece at the bandsaw"),
            Operation.Resaw or Operation.ResawStrips => First(
                Most(width, shop.Bandsaw.ResawHeight, Workaround.None, "highest resaw at the bandsaw"),
                Least(length, shop.Bandsaw.MinimumLength, Workaround.CarrierSled, "shortest piece at the bandsaw")),
            _ => null,
        };

        return ruling switch
        {
            null => new StationRuling.Allowed(),
            StationRuling.Instead instead when instead.Way == Workaround.None || !shop.WorksSmallPiecesByHand =>
                new StationRuling.Refused(instead.Limit, instead.Found, instead.Expected),
            _ => ruling,
        };
    }

    private static StationRuling? First(params StationRuling?[] rulings) => rulings.FirstOrDefault(r => r is not null);

    private static StationRuling.Instead? Least(Length found, Length limit, Workaround way, string words) =>
        found < limit ? new StationRuling.Instead(way, words, found, limit) : null;

    private static StationRuling.Instead? Most(Length found, Length limit, Workaround way, string words) =>
        found > limit ? new StationRuling.Instead(way, words, found, limit) : null;
}
