using System.Collections.Immutable;
using Scrapwright.Core.Shops;

namespace Scrapwright.Core.Calendar;

/// <summary>One thing that the maker does without a break: the works of a step that are for the same gifts, a glue-up, or one round of a coat.</summary>
public sealed record WorkTask
{
    /// <summary>Its name: the operation and what it is for. The same thing has the same name in every calendar of a workshop, also after planning again.</summary>
    public required string Id { get; init; }

    /// <summary>What to do, in words of the shop.</summary>
    public required string Title { get; init; }

    /// <summary>What is done.</summary>
    public required Operation Operation { get; init; }

    /// <summary>Where it is done.</summary>
    public required Station Station { get; init; }

    /// <summary>Labels of the gifts it is for, in the plan's order; empty when what comes of it is for none.</summary>
    public required ImmutableArray<string> Gifts { get; init; }

    /// <summary>Numbers of the plan's steps it is part of.</summary>
    public required ImmutableArray<int> Steps { get; init; }

    /// <summary>The glue-up it is; empty for any other task.</summary>
    public string GlueUp { get; init; } = "";

    /// <summary>Ids of the pieces that go in, in the plan's order.</summary>
    public required ImmutableArray<string> Pieces { get; init; }

    /// <summary>How many of its pieces are too small for the machine alone. [1], from zero</summary>
    public int SmallPieces { get; init; }

    /// <summary>How long it takes, set-up not counted; by the maker's own pace where it was timed. [min], at least 1; estimate</summary>
    public required int Minutes { get; init; }

    /// <summary>The same without any reading of the maker's own times, by which readings are compared. [min], at least 1; null in a calendar of before there were readings</summary>
    public int? UsualMinutes { get; init; }

    /// <summary>What the maker's pace at it depends on besides the operation, as in <see cref="TimeReading.Setting"/>.</summary>
    public string PaceSetting { get; init; } = "";

    /// <summary>How long when all goes well. [min], at least 1; estimate</summary>
    public required int LeastMinutes { get; init; }

    /// <summary>How long when it does not. [min]; estimate</summary>
    public required int MostMinutes { get; init; }

    /// <summary>Key of the setting its station has to be in; empty for none.</summary>
    public required string Setting { get; init; }

    /// <summary>Whether a machine runs, which not every hour allows.</summary>
    public bool NeedsMachine { get; init; }

    /// <summary>Coldest air in which glue or finish does its work; null where it does not matter. [°C]</summary>
    public int? LeastCelsius { get; init; }

    /// <summary>Warmest air; null where it does not matter. [°C]</summary>
    public int? MostCelsius { get; init; }

    /// <summary>Clamps that it needs and keeps; null for none.</summary>
    public TaskClamps? Clamps { get; init; }

    /// <summary>From its end until what it made may be worked on or handled: glue cures, finish dries. [min], from zero</summary>
    public int WaitMinutes { get; init; }

    /// <summary>The same when it goes quickly: the shorter figure of the finish's band; null where nothing but the planned wait is known. [min], from zero</summary>
    public int? LeastWaitMinutes { get; init; }

    /// <summary>How long the wood it begins with has to lie in the shop before. [min], from zero; estimate</summary>
    public int SettleMinutes { get; init; }

    /// <summary>What to lay out for it besides wood and clamps, each in a few words.</summary>
    public ImmutableArray<string> LayOut { get; init; } = [];

    /// <summary>Key of the hours it may lie in: all of the shop's or those for machines, and how warm it has to be.</summary>
    public string Hours => (NeedsMachine ? "machines" : "shop") + (LeastCelsius is { } least ? $"/{least}-{(MostCelsius is { } most ? most : "")} °C" : "");
}
