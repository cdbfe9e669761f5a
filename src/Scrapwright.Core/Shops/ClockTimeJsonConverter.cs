using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Scrapwright.Core.Shops;

/// <summary>Writes a time of day as people do: <c>18:30</c>. Reads that, <c>18:30:00</c>, and <c>24:00</c> for midnight; whole minutes only.</summary>
public sealed class ClockTimeJsonConverter : JsonConverter<TimeOnly>
{
    private static readonly string[] Formats = ["HH:mm", "H:mm", "HH:mm:ss"];

    /// <inheritdoc/>
    public override TimeOnly Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var text = reader.TokenType == JsonTokenType.String ? reader.GetString()! : "";
        if (text is "24:00" or "24:00:00") return TimeOnly.MinValue;
        return TimeOnly.TryParseExact(text, Formats, CultureInfo.InvariantCulture, DateTimeStyles.None, out var time) && time.Second == 0
            ? time
            : throw new JsonException("Expected a time of day in whole minutes such as \"18:30\".");
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, TimeOnly value, JsonSerializerOptions options)
    {
        ArgumentNullException.ThrowIfNull(writer);
        writer.WriteStringValue(value.ToString("HH:mm", CultureInfo.InvariantCulture));
    }
}
