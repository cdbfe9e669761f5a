namespace Scrapwright.Core.Finishing;

/// <summary>Rags wet with a drying oil heat up as the oil takes up oxygen, and burn without a spark.</summary>
/// <remarks>[NfpaOilyRags]: spread them out to dry outdoors, not in a pile and away from buildings; then into a metal can with a tight lid, filled with water and detergent.</remarks>
public static class OilyRags
{
    /// <summary>What is printed wherever a drying oil is used.</summary>
    public const string Caution =
        "Oily rags catch fire by themselves: dry them flat, one by one, outdoors, or drown them in a closed metal can.";
}
