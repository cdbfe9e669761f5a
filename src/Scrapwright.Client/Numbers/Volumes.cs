using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;

namespace Scrapwright.Client.Numbers;

/// <summary>Volumes as a yard counts them.</summary>
public static class Volumes
{
    /// <summary>Volume of an entry of the pile, all its pieces together, by sizes as measured.</summary>
    public static Volume Of(Offcut offcut) => Volume.Of(offcut.Length, offcut.Width, offcut.Thickness) * offcut.Count;

    /// <summary>Board feet (144 cubic inches of wood as measured) for an inch shop, litres for a millimetre shop; one decimal, rounded to nearest.</summary>
    public static (string Number, string Unit, string Spoken) Shown(Volume volume, LengthUnit unit) => unit == LengthUnit.Inch
        ? ((volume.CubicMillimetres / (144 * 25.4 * 25.4 * 25.4)).ToString("0.0"), "bd ft", "board feet")
        : ((volume.CubicMillimetres / 1e6).ToString("0.0"), "l", "litres");
}
