using System.Collections.Immutable;
using System.Globalization;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Designs;

/// <summary>
/// Reads a design's options into values and collects what is wrong with them. A value that cannot be read is replaced by the parameter's
/// default, so that reading goes on and all wrong options are found at once.
/// </summary>
public sealed class DesignOptions
{
    private const int LongestShown = 60;
    private readonly ImmutableArray<DesignParameter> parameters;
    private readonly Dictionary<string, string> given = new(StringComparer.Ordinal);
    private readonly List<DesignProblem> problems = [];
    private readonly LengthUnit unit;

    /// <summary>Takes the options apart; keys that are no parameter, or stand there twice, are problems.</summary>
    /// <param name="parameters">The family's parameters.</param>
    /// <param name="options">Values by key, as the maker wrote them; case and white space around keys do not matter.</param>
    /// <param name="unit">Unit of bare numbers, and of lengths in what is expected.</param>
    public DesignOptions(ImmutableArray<DesignParameter> parameters, ImmutableSortedDictionary<string, string> options, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(options);
        this.parameters = parameters;
        this.unit = unit;
        foreach (var (name, value) in options)
        {
            var key = Plain(name);
            if (!parameters.Any(p => p.Key == key)) problems.Add(new DesignProblem(Short(name), Short(value), DesignMessages.KnownOption(NearestWord.Of(key, parameters.Select(p => p.Key)))));
            else if (!given.TryAdd(key, value ?? "")) problems.Add(new DesignProblem(key, Short(value), DesignMessages.OptionOnce));
        }
    }

    /// <summary>What is wrong so far.</summary>
    public ImmutableArray<DesignProblem> Problems => [.. problems];

    /// <summary>True while nothing is wrong.</summary>
    public bool AreFine => problems.Count == 0;

    /// <summary>Whether the maker gave this option.</summary>
    public bool IsGiven(string key) => given.ContainsKey(key);

    /// <summary>The option as written, without white space around it; the default when not given.</summary>
    public string ReadText(string key) => (given.TryGetValue(key, out var text) ? text : Get(key).Default).Trim();

    /// <summary>A length within the parameter's bounds.</summary>
    public Length ReadLength(string key)
    {
        var parameter = Get(key);
        var (least, most) = (Limit(parameter.Minimum), Limit(parameter.Maximum));
        if (LengthParser.Parse(ReadText(key), unit, allowNegative: true).TryGetValue(out var length) && !(length < least) && !(length > most)) return length;
        Refuse(key, DesignMessages.LengthBetween(least is { } l ? ShowLeast(l) : "", most is { } m ? ShowMost(m) : ""));
        return LengthParser.ParseWithUnit(parameter.Default).Value;
    }

    /// <summary>A whole number within the parameter's bounds.</summary>
    public int ReadCount(string key)
    {
        var parameter = Get(key);
        var (least, most) = (int.Parse(parameter.Minimum), int.Parse(parameter.Maximum));
        if (int.TryParse(ReadText(key), NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count >= least && count <= most) return count;
        Refuse(key, DesignMessages.CountBetween(least, most));
        return int.TryParse(parameter.Default, NumberStyles.None, CultureInfo.InvariantCulture, out var standing) ? standing : least;
    }

    /// <summary>One of the parameter's words, as the parameter spells it.</summary>
    public string ReadChoice(string key)
    {
        var parameter = Get(key);
        var word = Plain(ReadText(key));
        if (parameter.Choices.Contains(word)) return word;
        Refuse(key, DesignMessages.OneOf(parameter.Choices));
        return parameter.Default;
    }

    /// <summary>Keys of the species named, in that order, each once; empty for any.</summary>
    public ImmutableArray<string> ReadSpecies(string key)
    {
        var keys = ImmutableArray.CreateBuilder<string>();
        foreach (var name in ReadText(key).Split('+', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            if (SpeciesTable.Find(name) is not { } species) problems.Add(new DesignProblem(key, Short(name), DesignMessages.KnownSpecies(SpeciesTable.Suggest(name).Select(s => s.Name))));
            else if (!keys.Contains(species.Key)) keys.Add(species.Key);
        }

        return keys.ToImmutable();
    }

    /// <summary>Notes that an option cannot be taken.</summary>
    /// <param name="key">Key of the parameter.</param>
    /// <param name="expected">What would do.</param>
    public void Refuse(string key, string expected) => problems.Add(new DesignProblem(key, Short(ReadText(key)), expected));

    /// <summary>Notes that an option cannot be taken unless a condition holds.</summary>
    public void Require(bool holds, string key, string expected)
    {
        if (!holds) Refuse(key, expected);
    }

    /// <summary>A length for reading, in the shop's unit; marked when it is not exact.</summary>
    public string Show(Length length) => LengthFormatter.Format(length, Style);

    /// <summary>A least length for reading, rounded up, so that what is shown does fit.</summary>
    public string ShowLeast(Length length) => LengthFormatter.Format(length, Style with { Rounding = Rounding.Up, Approximate = false });

    /// <summary>A greatest length for reading, rounded down, so that what is shown does fit.</summary>
    public string ShowMost(Length length) => LengthFormatter.Format(length, Style with { Rounding = Rounding.Down, Approximate = false });

    /// <summary>The problems as an outcome.</summary>
    public DesignOutcome Refused() => new DesignOutcome.Refused(Problems);

    private LengthStyle Style => unit == LengthUnit.Inch ? LengthStyle.Inches : LengthStyle.Millimetres;

    internal static string Plain(string text) => (text ?? "").Trim().ToLowerInvariant();

    internal static string Short(string? text) => text is null ? "" : text.Length <= LongestShown ? text : text[..LongestShown] + "…";

    private static Length? Limit(string text) => text.Length == 0 ? null : LengthParser.ParseWithUnit(text).Value;

    private DesignParameter Get(string key) =>
        parameters.FirstOrDefault(p => p.Key == key) ?? throw new ArgumentException($"The family has no parameter '{key}'.", nameof(key));
}
