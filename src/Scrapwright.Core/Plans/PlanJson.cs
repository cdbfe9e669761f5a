using System.Security.Cryptography;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Scrapwright.Core.Plans;

/// <summary>How plans, requests and their pieces are written as JSON: camelCase names, enums as kebab-case words, lengths with exact picometres beside readable sizes.</summary>
public static class PlanJson
{
    /// <summary>Options for every JSON this program reads and writes. Unknown members and missing required ones are errors.</summary>
    public static JsonSerializerOptions Options { get; } = Create(indented: false);

    /// <summary>The same, indented, for files that people open.</summary>
    public static JsonSerializerOptions Indented { get; } = Create(indented: true);

    /// <summary>A plan as a file's text.</summary>
    public static string Write(Plan plan) => JsonSerializer.Serialize(plan, Indented);

    /// <summary>A plan from a file's text.</summary>
    /// <exception cref="JsonException">Not a plan; line, position and path say where.</exception>
    public static Plan Read(string text) =>
        JsonSerializer.Deserialize<Plan>(text, Options) ?? throw new JsonException("Expected a plan, found null.");

    /// <summary>SHA-256 of a request in its compact form, lower-case hexadecimal.</summary>
    public static string Fingerprint(PlanRequest request) =>
        Convert.ToHexStringLower(SHA256.HashData(JsonSerializer.SerializeToUtf8Bytes(request, Options)));

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
