namespace Scrapwright.Planning.Problems;

/// <summary>In which order an offcut is milled and cut.</summary>
internal enum Route
{
    /// <summary>Faces and edges first, at full length and width; then ripped, then crosscut.</summary>
    MillWhole,

    /// <summary>Ripped on the bandsaw first, each lane milled alone: keeps thickness in cupped or very wide stock.</summary>
    RipFirst,

    /// <summary>Crosscut first, each piece milled alone: keeps thickness in bowed or twisted stock.</summary>
    CrosscutFirst,
}
