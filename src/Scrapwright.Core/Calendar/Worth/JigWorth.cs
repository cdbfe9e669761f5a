using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Calendar.Worth;

/// <summary>Whether a jig pays for the work of a plan.</summary>
public sealed record JigWorth
{
    /// <summary>The jig.</summary>
    public required Jig Jig { get; init; }

    /// <summary>Pieces it would serve. [1], above zero</summary>
    public required int Pieces { get; init; }

    /// <summary>How often a station is set up for them. [1], above zero</summary>
    public required int SetUps { get; init; }

    /// <summary>What it saves in all. [min], rounded down; estimate</summary>
    public required int SavedMinutes { get; init; }

    /// <summary>The same in the shop's currency, rounded to the hundredth; null without a worth of the hour.</summary>
    public decimal? SavedWorth { get; init; }

    /// <summary>What making it costs, time and material, rounded to the hundredth; null without a worth of the hour.</summary>
    public decimal? MakeCost { get; init; }

    /// <summary>What it costs to buy; null when there is no price.</summary>
    public Price? Price { get; init; }

    /// <summary>What the figures say.</summary>
    public required WorthVerdict Verdict { get; init; }

    /// <summary>From how many pieces such as these on making it pays, set up as often as here. [1]; null when never, or when nobody can say</summary>
    public int? PiecesToPay { get; init; }

    /// <summary>After how many plans such as this one making it has paid. [1]; null as above</summary>
    public int? PlansToPay { get; init; }
}
