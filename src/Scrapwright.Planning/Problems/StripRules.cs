using Scrapwright.Core.Measures;
using Scrapwright.Core.Milling;
using Scrapwright.Core.Pile;
using Scrapwright.Core.Shops;

namespace Scrapwright.Planning.Problems;

/// <summary>Whether the stations take a piece through face and edge work.</summary>
internal static class StripRules
{
    /// <summary>True when no station refuses a piece of that size without another way.</summary>
    internal static bool Allow(Offcut offcut, Length length, Length width, Length milled, Shop shop)
    {
        if (StripMilling.NeedsFaceJoint(offcut) && Refuses(Operation.FaceJoint))
        {
            return false;
        }

        if (StripMilling.NeedsFacePlane(offcut) && Refuses(Operation.FacePlane))
        {
            return false;
        }

        return !Refuses(Operation.EdgeJoint);

        bool Refuses(Operation operation) =>
            StationRules.Rule(operation, length, width, milled, shop) is StationRuling.Refused;
    }
}
