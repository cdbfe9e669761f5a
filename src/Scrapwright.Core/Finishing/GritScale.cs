namespace Scrapwright.Core.Finishing;

/// <summary>The standard a grit is marked by. The same number means another size in the other one.</summary>
public enum GritScale
{
    /// <summary>FEPA, ISO 6344: the mark begins with P.</summary>
    Fepa,

    /// <summary>ANSI B74.18, CAMI: a bare number.</summary>
    Cami,
}
