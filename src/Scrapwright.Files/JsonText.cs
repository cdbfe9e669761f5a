using System.Text;
using System.Text.Json;
using Scrapwright.Core.Plans;

namespace Scrapwright.Files;

/// <summary>Reads one value from JSON text and notes where it does not fit.</summary>
internal static class JsonText
{
    // People write these files by hand: a comma too many or a comment does no harm, a name twice does.
    private static readonly JsonSerializerOptions Options = new(PlanJson.Options)
    {
        AllowTrailingCommas = true,
        ReadCommentHandling = JsonCommentHandling.Skip,
        RespectNullableAnnotations = true,
        AllowDuplicateProperties = false,
    };

    internal static T? Read<T>(string text, ProblemList problems)
        where T : class
    {
        try
        {
            var value = JsonSerializer.Deserialize<T>(text, Options);
            if (value is null) problems.Add(1, 1, "null", "an object");
            return value;
        }
        catch (JsonException error)
        {
            var line = (int)(error.LineNumber ?? 0);
            var column = ColumnOf(text, line, (int)(error.BytePositionInLine ?? 0));
            problems.Add(line + 1, column + 1, error.Path is { Length: > 0 } path ? path : "", Reason(error));
            return null;
        }
    }

    private static string Reason(JsonException error)
    {
        // The library puts path, line and position behind its sentence; they are told apart already.
        var message = error.Message;
        var tail = message.IndexOf(" Path: ", StringComparison.Ordinal);
        if (tail < 0) tail = message.IndexOf(" LineNumber: ", StringComparison.Ordinal);
        if (tail > 0) message = message[..tail];
        return $"JSON that fits here ({message.TrimEnd('.')})";
    }

    private static int ColumnOf(string text, int line, int bytePosition)
    {
        var rest = text.AsSpan();
        for (var i = 0; i < line && rest.IndexOf('\n') is >= 0 and var end; i++) rest = rest[(end + 1)..];
        var bytes = Encoding.UTF8.GetBytes(rest[..Math.Min(rest.Length, bytePosition + 1)].ToString());
        return Encoding.UTF8.GetCharCount(bytes.AsSpan(0, Math.Min(bytes.Length, bytePosition)));
    }
}
