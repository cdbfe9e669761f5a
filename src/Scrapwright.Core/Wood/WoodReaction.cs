using System.Collections.Immutable;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Wood;

/// <summary>One wood of the chart of reactions. Lines that the chart has for one wood are merged: all kinds and ways, the strongest and the commonest.</summary>
/// <remarks>A craft journal's chart, not a medical standard: [ToxicWoods1990]. Listing does not mean that the wood always harms; not being listed does not mean that it never does.</remarks>
public sealed record WoodReaction
{
    /// <summary>Most strength signs the chart gives: [ToxicWoods1990].</summary>
    public const int MostStrength = 4;

    /// <summary>The wood as the chart calls it.</summary>
    public required string Wood { get; init; }

    /// <summary>What it can do; empty where the chart only says where.</summary>
    public required ImmutableArray<ReactionKind> Kinds { get; init; }

    /// <summary>Where it shows.</summary>
    public required ImmutableArray<ReactionWay> Ways { get; init; }

    /// <summary>How strong, 1 to 4; 0 where the chart has a question mark.</summary>
    public required int Strength { get; init; }

    /// <summary>What does it.</summary>
    public required ImmutableArray<ReactionOrigin> Origins { get; init; }

    /// <summary>How common.</summary>
    public required ReactionFrequency Frequency { get; init; }

    /// <summary>Keys of the species it is taken to mean; empty where the species table has none.</summary>
    public required ImmutableArray<string> SpeciesKeys { get; init; }

    /// <summary>What it is limited to, for example <c>Spalted wood only</c>; empty for all of it.</summary>
    public required string Only { get; init; }

    /// <summary>Where the row comes from.</summary>
    public required ValueSource Source { get; init; }

    /// <summary>The row in words, with its source: <c>Sensitiser (eyes, skin), from wood, dust, strength ++ of ++++ [ToxicWoods1990]</c>.</summary>
    public string InWords
    {
        get
        {
            string ways = string.Join(", ", Ways.Select(Word));
            string kinds = Kinds.IsEmpty ? ways : $"{Listed(Kinds.Select(Word))} ({ways})";
            string strength = Strength == 0 ? "" : $", strength {new string('+', Strength)} of {new string('+', MostStrength)}";
            string text = $"{kinds}, from {string.Join(", ", Origins.Select(Word))}{strength} [{Source.Key}]";
            return Only.Length > 0 ? $"{Only}: {text}" : FirstLetter.Large(text);
        }
    }

    private static string Listed(IEnumerable<string> words)
    {
        string[] all = [.. words];
        return all.Length < 2 ? string.Concat(all) : $"{string.Join(", ", all[..^1])} and {all[^1]}";
    }

    private static string Word(ReactionKind kind) => kind switch
    {
        ReactionKind.Irritant => "irritant",
        ReactionKind.Sensitiser => "sensitiser",
        ReactionKind.NasalCancer => "linked to cancer of the nose",
        ReactionKind.LungInflammation => "lung inflammation",
        ReactionKind.Poison => "poisonous",
        _ => "nausea",
    };

    private static string Word(ReactionWay way) => way.ToString().ToLowerInvariant();

    private static string Word(ReactionOrigin origin) => origin switch
    {
        ReactionOrigin.LeavesAndBark => "leaves and bark",
        _ => origin.ToString().ToLowerInvariant(),
    };
}
