namespace Scrapwright.Core.Pile;

/// <summary>What a word of an entry line is for.</summary>
internal enum EntryWordKind
{
    /// <summary>Says nothing: a, of, with, board.</summary>
    Filler,

    /// <summary>Remark on the wood that goes into the note: curly, old.</summary>
    Remark,

    /// <summary>A count in letters.</summary>
    Number,

    /// <summary>Comes before a count: qty.</summary>
    CountAhead,

    /// <summary>State of faces.</summary>
    Faces,

    /// <summary>Both, two or one, before "faces"; also a count.</summary>
    HowManyFaces,

    /// <summary>How the rings stand.</summary>
    Rings,

    /// <summary>The word flat, which needs "sawn" behind it.</summary>
    Flat,

    /// <summary>Cup, bow or twist.</summary>
    Warp,

    /// <summary>A defect.</summary>
    Defect,

    /// <summary>Says that a defect or warp is not there.</summary>
    No,

    /// <summary>Begins a note.</summary>
    Note,
}
