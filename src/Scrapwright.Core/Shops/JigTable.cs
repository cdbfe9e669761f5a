using System.Collections.Immutable;

namespace Scrapwright.Core.Shops;

/// <summary>Common jigs of a small shop, by their trade names. Every minute is an estimate: the maker's own figures, in <c>jigs.csv</c>, take their place.</summary>
public static class JigTable
{
    /// <summary>Every one, the quickest to make first.</summary>
    public static ImmutableArray<Jig> All { get; } =
    [
        new()
        {
            Key = "stop-block", Name = "Stop block", Operations = [Operation.RoughCrosscut, Operation.CrosscutStrips, Operation.CrosscutBlanks, Operation.CutRods],
            SetUpMinutes = 2, EachSeconds = 15, MakeMinutes = 20,
        },
        new() { Key = "clamping-cauls", Name = "Clamping cauls", Operations = [Operation.GlueUp, Operation.FaceGlue], SetUpMinutes = 2, EachSeconds = 120, MakeMinutes = 45 },
        new() { Key = "drilling-template", Name = "Drilling template", Operations = [Operation.Drill], SetUpMinutes = 4, EachSeconds = 90, MakeMinutes = 40 },
        new()
        {
            Key = "carrier-board", Name = "Planer carrier board", Operations = [Operation.FacePlane, Operation.CleanSawnFaces, Operation.PlaneToThickness, Operation.PlanePanel],
            SetUpMinutes = 3, EachSeconds = 30, MakeMinutes = 45, OnlySmall = true,
        },
        new() { Key = "resaw-fence", Name = "Resaw fence", Operations = [Operation.ResawStrips, Operation.Resaw], SetUpMinutes = 4, EachSeconds = 30, MakeMinutes = 60 },
        new() { Key = "finishing-rack", Name = "Finishing rack", Operations = [Operation.Finish], SetUpMinutes = 3, EachSeconds = 5, MakeMinutes = 60 },
        new() { Key = "crosscut-sled", Name = "Crosscut sled", Operations = [Operation.CrosscutStrips, Operation.CrosscutBlanks, Operation.CutMitres], SetUpMinutes = 3, EachSeconds = 20, MakeMinutes = 150 },
    ];

    /// <summary>The table with the maker's own in place of those of the same key, and the others of the maker's behind.</summary>
    /// <param name="own">The maker's own.</param>
    public static ImmutableArray<Jig> With(ImmutableArray<Jig> own) =>
    [
        .. All.Select(jig => own.FirstOrDefault(o => o.Key == jig.Key) ?? jig), .. own.Where(o => All.All(jig => jig.Key != o.Key)),
    ];
}
