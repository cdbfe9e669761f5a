using System.Diagnostics;

namespace Scrapwright.Cli.Tests;

/// <summary>The program as it was built, run as a process of its own with both outputs piped.</summary>
internal static class Program
{
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(5);

    public static Task<Ran> RunAsync(params string[] args) => RunWithAsync("", null, args);

    /// <summary>Runs the program.</summary>
    /// <param name="input">Its standard input.</param>
    /// <param name="whileRunning">Called once with the process after its first line on the standard error; may be null.</param>
    /// <param name="args">Its arguments.</param>
    public static async Task<Ran> RunWithAsync(string input, Action<Process>? whileRunning, params string[] args)
    {
        var start = new ProcessStartInfo(Path.Combine(AppContext.BaseDirectory, "scrapwright"), args)
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var process = Process.Start(start)!;
        using var limit = new CancellationTokenSource(Longest);
        try
        {
            var output = process.StandardOutput.ReadToEndAsync(limit.Token);
            await process.StandardInput.WriteAsync(input);
            process.StandardInput.Close();
            var first = whileRunning is null ? "" : await process.StandardError.ReadLineAsync(limit.Token) + "\n";
            whileRunning?.Invoke(process);
            var error = first + await process.StandardError.ReadToEndAsync(limit.Token);
            await process.WaitForExitAsync(limit.Token);
            return new Ran(process.ExitCode, await output, error);
        }
        catch (OperationCanceledException)
        {
            process.Kill();
            throw new TimeoutException($"scrapwright {string.Join(' ', args)} did not end within {Longest}.");
        }
    }
}
