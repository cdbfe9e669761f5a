using System.Diagnostics;
using System.Net;
using System.Net.Sockets;

namespace Scrapwright.Benchmarks;

/// <summary>From starting the built web app with an empty folder to its first page.</summary>
internal static class StartTable
{
    internal static async Task<int> RunAsync(string[] args)
    {
        if (args.Length == 0 || !File.Exists(args[0]))
        {
            Console.Error.WriteLine("Expected the path of the built Scrapwright.Web.dll.");
            return 2;
        }

        var runs = args.Length > 1 ? int.Parse(args[1]) : 5;
        Console.WriteLine("| run | first page s |");
        Console.WriteLine("|---:|---:|");
        for (var run = 1; run <= runs; run++)
        {
            Console.WriteLine($"| {run} | {await OnceAsync(Path.GetFullPath(args[0])):0.00} |");
        }

        return 0;
    }

    private static async Task<double> OnceAsync(string program)
    {
        var port = FreePort();
        var data = Directory.CreateTempSubdirectory("scrapwright-start");
        var clock = Stopwatch.StartNew();
        using var process = Process.Start(new ProcessStartInfo("dotnet", [program, "--data", data.FullName, "--urls", $"http://127.0.0.1:{port}"])
        {
            RedirectStandardOutput = true,
            WorkingDirectory = Path.GetDirectoryName(program)!,
        })!;
        try
        {
            using var client = new HttpClient();
            while (clock.Elapsed < TimeSpan.FromSeconds(60))
            {
                try
                {
                    using var answer = await client.GetAsync(new Uri($"http://127.0.0.1:{port}/"));
                    if (answer.IsSuccessStatusCode)
                    {
                        return clock.Elapsed.TotalSeconds;
                    }
                }
                catch (HttpRequestException)
                {
                    await Task.Delay(20);
                }
            }

            return double.NaN;
        }
        finally
        {
            process.Kill(entireProcessTree: true);
            await process.WaitForExitAsync();
            data.Delete(recursive: true);
        }
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
