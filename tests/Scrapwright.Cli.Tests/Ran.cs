namespace Scrapwright.Cli.Tests;

/// <summary>What a run of the program left: its exit code and what it wrote.</summary>
internal sealed record Ran(int Code, string Output, string Error)
{
    /// <summary>No escape code, no stack trace, whatever came of it.</summary>
    public void IsPlain()
    {
        foreach (var text in (string[])[Output, Error])
        {
            Assert.DoesNotContain('\e', text);
            Assert.DoesNotContain("   at ", text, StringComparison.Ordinal);
            Assert.DoesNotContain("Exception", text, StringComparison.Ordinal);
        }
    }
}
