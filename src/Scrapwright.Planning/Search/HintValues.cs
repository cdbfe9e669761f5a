using Google.OrTools.Sat;

namespace Scrapwright.Planning.Search;

/// <summary>Values suggested to the solver: those of a placement, and those that follow from them.</summary>
internal sealed class HintValues
{
    private readonly Dictionary<int, long> values = [];

    /// <summary>Value of a variable that was set before.</summary>
    internal long this[IntVar variable]
    {
        get => values[variable.GetIndex()];
        set => values[variable.GetIndex()] = value;
    }
}
