using Scrapwright.Planning;

namespace Scrapwright.Cli.Output;

/// <summary>Says how a search for ideas goes on: one line for each idea that was tried.</summary>
internal sealed class IdeasTicker(Terminal terminal) : IProgress<IdeasProgress>
{
    private readonly Lock gate = new();

    /// <inheritdoc/>
    public void Report(IdeasProgress value)
    {
        lock (gate)
        {
            terminal.Error.WriteLine($"{value.Done,3} of {value.Total}  {value.Title}{(value.Proposal is { } proposal ? $": {proposal.Count}" : "")}");
        }
    }
}
