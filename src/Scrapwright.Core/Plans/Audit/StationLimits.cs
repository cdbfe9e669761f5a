using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Plans.Audit;

/// <summary>The audit's own reading of the shop's limits: how a piece must be worked at the station of an operation, or that it cannot.</summary>
internal static class StationLimits
{
    /// <summary>The way round that the limits ask for; null when the piece must not be worked at all.</summary>
    /// <param name="operation">What is done.</param>
    /// <param name="length">Length going in.</param>
    /// <param name="width">Width going in; of a rip the narrowest output, of a trim the output.</param>
    /// <param name="thickness">Thickness coming out.</param>
    /// <param name="shop">The shop.</param>
    public static Workaround? WayRound(Operation operation, Length length, Length width, Length thickness, Shop shop)
    {
        var way = operation switch
        {
            Operation.FaceJoint => Jointer(length, width, shop)
                ?? (thickness < shop.Jointer.MinimumThickness || width > shop.Jointer.MaximumWidth ? Workaround.HandTool : null),
            Operation.EdgeJoint => Jointer(length, width, shop),
            Operation.FacePlane or Operation.CleanSawnFaces or Operation.PlaneToThickness or Operation.FlattenPanel or Operation.PlanePanel => Planer(length, width, thickness, shop),
            Operation.Rip or Operation.TrimWidth => Fence(length, width, thickness, shop),
            Operation.RoughCrosscut or Operation.CrosscutStrips or Operation.CrosscutBlanks =>
                width > shop.TableSaw.MaximumCrosscut || thickness > shop.TableSaw.MaximumDepth ? Workaround.HandTool : null,
            Operation.RoughRip => length < shop.Bandsaw.MinimumLength ? Workaround.HandTool : null,
            Operation.Resaw or Operation.ResawStrips => width > shop.Bandsaw.ResawHeight ? Impossible
                : length < shop.Bandsaw.MinimumLength ? Workaround.CarrierSled : null,
            _ => (Workaround?)null,
        };
        if (way is null)
        {
            return Workaround.None;
        }

        return way == Impossible || !shop.WorksSmallPiecesByHand ? null : way;
    }

    // No way of working is called None, so it can stand for: not at all.
    private const Workaround Impossible = Workaround.None;

    private static Workaround? Jointer(Length length, Length width, Shop shop) =>
        length < shop.Jointer.MinimumLength || width < shop.Jointer.MinimumWidth ? Workaround.HandTool : null;

    private static Workaround? Planer(Length length, Length width, Length thickness, Shop shop)
    {
        if (thickness > shop.Planer.MaximumThickness)
        {
            return Impossible;
        }

        return width > shop.Planer.MaximumWidth ? Workaround.HandTool
            : length < shop.Planer.MinimumLength || thickness < shop.Planer.MinimumThickness ? Workaround.CarrierSled
            : null;
    }

    private static Workaround? Fence(Length length, Length width, Length thickness, Shop shop)
    {
        if (thickness > shop.TableSaw.MaximumDepth)
        {
            return Impossible;
        }

        return length < shop.TableSaw.MinimumRipLength || width < shop.TableSaw.MinimumRipWidth ? Workaround.CarrierSled : null;
    }
}
