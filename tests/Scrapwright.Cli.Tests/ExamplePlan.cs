namespace Scrapwright.Cli.Tests;

/// <summary>The example workshop, written and planned once by the program for all tests that read it.</summary>
public sealed class ExamplePlan : IAsyncLifetime
{
    private readonly Workshop workshop = new();

    internal Ran Demo { get; private set; } = null!;

    internal Ran Planned { get; private set; } = null!;

    internal string Shed => workshop.PathOf("shed");

    internal string Out => workshop.PathOf("out");

    internal string Plan => Path.Combine(Out, "plan.json");

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        Demo = await Program.RunAsync("demo", Shed);
        Planned = await Program.RunAsync("plan", Shed, "--out", Out, "--seconds", "1", "--repeatable");
    }

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        workshop.Dispose();
        return ValueTask.CompletedTask;
    }
}
