namespace Scrapwright.Core.Pile;

/// <summary>The word for each kind of defect, as written and read in entry lines and files.</summary>
public static class DefectWords
{
    /// <summary>The word for a kind.</summary>
    /// <param name="kind">The kind.</param>
    public static string Of(DefectKind kind) => kind switch
    {
        DefectKind.Knot => "knot",
        DefectKind.Check => "check",
        DefectKind.Sapwood => "sapwood",
        DefectKind.NailHole => "nail hole",
        DefectKind.Decay => "decay",
        DefectKind.Wane => "wane",
        DefectKind.Other => "defect",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "One of the named kinds."),
    };
}
