using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Milling;

/// <summary>Whether a piece can be sawn into layers, with the sum: (start − kerf × (layers − 1)) / layers − clean-up against the target.</summary>
/// <param name="Start">Thickness before sawing.</param>
/// <param name="Layers">How many layers.</param>
/// <param name="Kerf">Width of the resaw cut.</param>
/// <param name="CleanUp">What cleaning the sawn faces of a layer takes.</param>
/// <param name="Target">Thickness each layer must have afterwards.</param>
public sealed record ResawDecision(Length Start, int Layers, Length Kerf, Length CleanUp, Length Target)
{
    /// <summary>Thickness of each layer after clean-up, rounded down to a picometre.</summary>
    public Length Layer => (Start - (Kerf * (Layers - 1))).Divide(Layers, Rounding.Down) - (Layers > 1 ? CleanUp : Length.Zero);

    /// <summary>True when every layer reaches the target.</summary>
    public bool Works => Layer >= Target;

    /// <summary>What is over (or, negative, missing) per layer.</summary>
    public Length Over => Layer - Target;

    /// <summary>The most layers that still reach the target; 0 when not even the whole piece does.</summary>
    public static int MostLayers(Length start, Length kerf, Length cleanUp, Length target)
    {
        var layers = 0;
        while (new ResawDecision(start, layers + 1, kerf, cleanUp, target).Works)
        {
            layers++;
        }

        return layers;
    }
}
