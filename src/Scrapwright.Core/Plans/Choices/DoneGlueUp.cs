using System.Collections.Immutable;

namespace Scrapwright.Core.Plans.Choices;

/// <summary>A glue-up that is glued.</summary>
/// <param name="Id">What is written on it: G1, G2 …</param>
/// <param name="Gift">Label of the gift.</param>
/// <param name="Part">Key of the panel part.</param>
/// <param name="Blanks">Blanks to crosscut along each layer.</param>
/// <param name="Layers">Layers to resaw from it.</param>
/// <param name="Strips">Its strips, lower edge first, exactly as they were planned.</param>
public sealed record DoneGlueUp(string Id, string Gift, string Part, int Blanks, int Layers, ImmutableArray<Strip> Strips)
{
    /// <summary>Other gifts that get pieces of it.</summary>
    public ImmutableArray<GlueUpShare> Also { get; init; } = [];

    /// <summary>A glue-up of a plan as done.</summary>
    public static DoneGlueUp Of(GlueUp glueUp)
    {
        ArgumentNullException.ThrowIfNull(glueUp);
        return new(glueUp.Id, glueUp.Gift, glueUp.Part, glueUp.Blanks, glueUp.Layers, glueUp.Strips) { Also = glueUp.Also };
    }

    /// <summary>True when a glue-up of a plan is just this one.</summary>
    public bool Is(GlueUp glueUp)
    {
        ArgumentNullException.ThrowIfNull(glueUp);
        return (glueUp.Id, glueUp.Gift, glueUp.Part, glueUp.Blanks, glueUp.Layers) == (Id, Gift, Part, Blanks, Layers) && glueUp.Strips.SequenceEqual(Strips) && glueUp.Also.SequenceEqual(Also);
    }

    /// <summary>How many copies of a gift's part it gives; 0 when none.</summary>
    public int PiecesFor(string gift, string part) =>
        (Gift == gift && Part == part ? (Blanks * Layers) - Also.Sum(a => a.Pieces) : 0) + Also.Where(a => a.Gift == gift && a.Part == part).Sum(a => a.Pieces);
}
