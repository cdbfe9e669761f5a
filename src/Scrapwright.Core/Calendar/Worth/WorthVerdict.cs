namespace Scrapwright.Core.Calendar.Worth;

/// <summary>What the figures say. Only they: the maker decides.</summary>
public enum WorthVerdict
{
    /// <summary>Not to be said from the figures there are: an hour has no worth, or nothing has a price.</summary>
    Open,

    /// <summary>The shop has it.</summary>
    Have,

    /// <summary>Going on without costs least.</summary>
    DoWithout,

    /// <summary>Making it costs least.</summary>
    Make,

    /// <summary>Buying it costs least.</summary>
    Buy,
}
