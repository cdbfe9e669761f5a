using System.Diagnostics;
using System.Text.RegularExpressions;

namespace Scrapwright.Browser.Tests;

/// <summary>The real program, started as a process on a free port with a data folder of its own.</summary>
internal sealed partial class RunningApp : IAsyncDisposable
{
    private readonly Process process;
    private readonly DirectoryInfo data;

    private RunningApp(Process process, DirectoryInfo data, Uri address)
    {
        this.process = process;
        this.data = data;
        Address = address;
    }

    /// <summary>Where it listens.</summary>
    public Uri Address { get; }

    /// <summary>Starts it and waits until it says where it is.</summary>
    public static async Task<RunningApp> StartAsync()
    {
        var data = Directory.CreateTempSubdirectory("scrapwright-browser-");
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var argument in new[] { Program(), "--data", data.FullName, "--urls", "http://127.0.0.1:0" })
        {
            start.ArgumentList.Add(argument);
        }

        var process = Process.Start(start) ?? throw new InvalidOperationException("The program did not start.");
        var said = new List<string>();
        using var patience = new CancellationTokenSource(TimeSpan.FromSeconds(60));
        while (await process.StandardOutput.ReadLineAsync(patience.Token) is { } line)
        {
            said.Add(line);
            if (AddressPattern().Match(line) is { Success: true } match)
            {
                // Read on, so that a full pipe never stops the program.
                _ = process.StandardOutput.BaseStream.CopyToAsync(Stream.Null, CancellationToken.None);
                _ = process.StandardError.BaseStream.CopyToAsync(Stream.Null, CancellationToken.None);
                return new RunningApp(process, data, new Uri(match.Value));
            }
        }

        process.Dispose();
        throw new InvalidOperationException($"The program ended before it listened: {string.Join('\n', said)}");
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        process.Kill();
        await process.WaitForExitAsync();
        process.Dispose();
        data.Delete(recursive: true);
    }

    // Built beside these tests, in the folder of its own project: artifacts/bin/<project>/<configuration>.
    private static string Program()
    {
        var here = new DirectoryInfo(AppContext.BaseDirectory);
        var path = Path.Combine(here.Parent!.Parent!.FullName, "Scrapwright.Web", here.Name, "Scrapwright.Web.dll");
        return File.Exists(path) ? path : throw new FileNotFoundException("The web program is not built.", path);
    }

    [GeneratedRegex(@"http://127\.0\.0\.1:\d+")]
    private static partial Regex AddressPattern();
}
