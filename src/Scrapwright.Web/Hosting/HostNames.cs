using System.Net;

namespace Scrapwright.Web.Hosting;

/// <summary>The names this machine is reached by. A page elsewhere whose name was made to point here (DNS rebinding) comes with another one and is refused.</summary>
internal static class HostNames
{
    /// <summary>A test of the host of a request: loopback and plain addresses, the machine's own name, those listened on, and those of <c>--hosts</c>.</summary>
    internal static Predicate<string> Allowed(IConfiguration configuration)
    {
        var names = new HashSet<string>(StringComparer.OrdinalIgnoreCase) { "localhost", Environment.MachineName };
        foreach (var url in Split(configuration["urls"], ';'))
        {
            if (Uri.TryCreate(url.Replace("*", "localhost", StringComparison.Ordinal).Replace("+", "localhost", StringComparison.Ordinal), UriKind.Absolute, out var uri)) names.Add(uri.Host);
        }

        names.UnionWith(Split(configuration["hosts"], ','));
        return host => names.Contains(host)
            || IPAddress.TryParse(host.Trim('[', ']'), out _)
            // Names that only a local network gives out.
            || (host.StartsWith(Environment.MachineName + ".", StringComparison.OrdinalIgnoreCase) && LocalEndings.Any(e => host.EndsWith(e, StringComparison.OrdinalIgnoreCase)));
    }

    // RFC 6762 (.local), RFC 8375 (.home.arpa), reserved for private use by ICANN in 2024 (.internal).
    private static readonly string[] LocalEndings = [".local", ".home.arpa", ".internal"];

    private static string[] Split(string? text, char separator) =>
        (text ?? "").Split(separator, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
}
