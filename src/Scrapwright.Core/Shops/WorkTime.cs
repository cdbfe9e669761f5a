namespace Scrapwright.Core.Shops;

/// <summary>How long one kind of work takes. Defaults are common practice, no source; the shop's own times replace them.</summary>
/// <param name="Operation">The kind of work.</param>
/// <param name="SetUpMinutes">Setting up and clearing away, once a step.</param>
/// <param name="EachMinutes">Each piece worked.</param>
/// <param name="WaitMinutes">Waiting afterwards without a hand on it (glue, finish).</param>
public sealed record WorkTime(Operation Operation, int SetUpMinutes, int EachMinutes, int WaitMinutes = 0);
