using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Milling;

/// <summary>The strip that a run of solid parts is cut from.</summary>
/// <param name="Needs">What it must measure.</param>
/// <param name="Length">Its length.</param>
/// <param name="Strip">The strip.</param>
public sealed record WorkedBoard(SolidNeeds Needs, Length Length, WorkedStrip Strip);
