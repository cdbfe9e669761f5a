namespace Scrapwright.Core.Finishing;

/// <summary>A kind of thing that a plan uses up.</summary>
public enum ConsumableKind
{
    /// <summary>Glue. [g]</summary>
    Glue,

    /// <summary>Finish. [ml]</summary>
    Finish,

    /// <summary>Discs or sheets of one grit. [pieces]</summary>
    Abrasive,

    /// <summary>Rags to wipe with. [pieces]</summary>
    Rag,
}
