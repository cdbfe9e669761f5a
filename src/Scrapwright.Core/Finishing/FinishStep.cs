namespace Scrapwright.Core.Finishing;

/// <summary>One thing to do when finishing, and how long to leave it then.</summary>
/// <param name="Coat">Which coat, from 1; 0 for what comes after the last.</param>
/// <param name="Text">What to do.</param>
/// <param name="HandsOnMinutes">With a hand on it, for one gift. [min]; estimate.</param>
/// <param name="WaitMinutes">Waiting afterwards. [min]</param>
public sealed record FinishStep(int Coat, string Text, int HandsOnMinutes, int WaitMinutes);
