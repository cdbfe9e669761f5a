using System.Text.Json;
using System.Text.Json.Serialization;

namespace Scrapwright.Core.Gifts;

/// <summary>Writes a repetition in its words and reads them. "Every year" alone means nothing here: there is no date beside it.</summary>
public sealed class RepetitionJsonConverter : JsonConverter<Repetition>
{
    /// <inheritdoc/>
    public override Repetition Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var text = reader.TokenType == JsonTokenType.String ? reader.GetString()! : "?";
        var isBare = text.Trim() is var bare && (bare.Equals("every year", StringComparison.OrdinalIgnoreCase) || bare.Equals("yearly", StringComparison.OrdinalIgnoreCase));
        return (isBare ? null : RepetitionWords.Find(text, DateOnly.MinValue))
            ?? throw new JsonException($"Expected words such as {RepetitionWords.Expected}.");
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, Repetition value, JsonSerializerOptions options)
    {
        ArgumentNullException.ThrowIfNull(writer);
        writer.WriteStringValue(RepetitionWords.Write(value));
    }
}
