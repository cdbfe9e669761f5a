namespace Scrapwright.Core.Shops;

/// <summary>How a piece below a station's minimum is worked safely instead. The machine's manual comes first.</summary>
public enum Workaround
{
    /// <summary>Nothing special: within the station's limits.</summary>
    None,

    /// <summary>With a hand plane or hand saw instead of the machine.</summary>
    HandTool,

    /// <summary>On a carrier sled or carrier board through the planer.</summary>
    CarrierSled,

    /// <summary>Tacked end to end or side by side with others of the same thickness, or between longer scrap rails.</summary>
    Gang,
}
