using System.Globalization;
using System.Security.Cryptography;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.RegularExpressions;

namespace Scrapwright.Core.Plans;

/// <summary>How plans, requests and their pieces are written as JSON: camelCase names, enums as kebab-case words, lengths with exact picometres beside readable sizes.</summary>
public static partial class PlanJson
{
    /// <summary>Options for every JSON this program reads and writes. Unknown members and missing required ones are errors.</summary>
    public static JsonSerializerOptions Options { get; } = Create(indented: false);

    /// <summary>The same, indented, for files that people open.</summary>
    public static JsonSerializerOptions Indented { get; } = Create(indented: true);

    /// <summary>A plan as a file's text.</summary>
    public static string Write(Plan plan) => JsonSerializer.Serialize(plan, Indented);

    /// <summary>A plan from a file's text.</summary>
    /// <exception cref="JsonException">Not a plan; line, position and path say where.</exception>
    public static Plan Read(string text)
    {
        try
        {
            return JsonSerializer.Deserialize<Plan>(text, Options) ?? throw new JsonException("Expected a plan, found null.");
        }
        catch (NotSupportedException fault)
        {
            // The library's answer to a reason without its kind: position in the message, not in members.
            var at = Position().Match(fault.Message);
            throw new JsonException(
                "Expected a member \"kind\" that says which reason this is.",
                at.Groups["path"].Value,
                at.Success ? long.Parse(at.Groups["line"].ValueSpan, CultureInfo.InvariantCulture) : null,
                at.Success ? long.Parse(at.Groups["byte"].ValueSpan, CultureInfo.InvariantCulture) : null,
                fault);
        }
    }

    /// <summary>SHA-256 of a request in its compact form, lower-case hexadecimal. What an hour is worth changes no plan and is not in it.</summary>
    public static string Fingerprint(PlanRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        var decisive = request.Shop.HourWorth is null ? request : request with { Shop = request.Shop with { HourWorth = null } };
        return Convert.ToHexStringLower(SHA256.HashData(JsonSerializer.SerializeToUtf8Bytes(decisive, Options)));
    }

    [GeneratedRegex(@"Path: (?<path>\S*) \| LineNumber: (?<line>\d+) \| BytePositionInLine: (?<byte>\d+)")]
    private static partial Regex Position();

    private static JsonSerializerOptions Create(bool indented) => new(JsonSerializerDefaults.Web)
    {
        WriteIndented = indented,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        NumberHandling = JsonNumberHandling.Strict,
        IgnoreReadOnlyProperties = true,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.KebabCaseLower, allowIntegerValues: false) },
    };
}
