using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Scrapwright.Core.Measures;

/// <summary>Writes a length as <c>{"pm":9525000000,"in":"3/8","mm":"9.525"}</c>; only <c>pm</c> counts when read back. Also reads a string with a unit.</summary>
/// <remarks>Where inches have no short exact form, <c>in</c> is the nearest 1/64 after <c>≈</c>.</remarks>
public sealed class LengthJsonConverter : JsonConverter<Length>
{
    private const string PicometresName = "pm";

    /// <inheritdoc/>
    public override Length Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) => reader.TokenType switch
    {
        JsonTokenType.StartObject => ReadObject(ref reader),
        JsonTokenType.String => ReadText(reader.GetString()!),
        _ => throw new JsonException(Messages.LengthJsonExpected),
    };

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, Length value, JsonSerializerOptions options)
    {
        ArgumentNullException.ThrowIfNull(writer);
        writer.WriteStartObject();
        writer.WriteNumber(PicometresName, value.Picometres);

        // The relaxed encoder keeps the sign ≈ readable; the text holds nothing but digits, a slash, spaces and that sign.
        writer.WriteString("in", JsonEncodedText.Encode(InchText(value), JavaScriptEncoder.UnsafeRelaxedJsonEscaping));
        writer.WriteString("mm", value.ExactMillimetreNumber());
        writer.WriteEndObject();
    }

    private static string InchText(Length value)
    {
        if (value.ExactInchNumber() is { } exact) return exact;
        var sixtyFourths = RoundedDivision.Divide((Int128)value.Picometres * 64, Length.PicometresPerInch, Rounding.Nearest);
        return "≈ " + Length.ReducedFractionText(sixtyFourths, 64);
    }

    private static Length ReadText(string text)
    {
        var result = LengthParser.ParseWithUnit(text, allowNegative: true);
        return result.TryGetValue(out var length) ? length : throw new JsonException($"{Messages.LengthJsonExpected} {result.Error.Message}");
    }

    private static Length ReadObject(ref Utf8JsonReader reader)
    {
        long? picometres = null;
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            var isPicometres = reader.ValueTextEquals(PicometresName);
            reader.Read();
            if (!isPicometres) reader.TrySkip(); // Not Skip, which refuses a streamed document; a converter always has its whole value.
            else if (reader.TokenType == JsonTokenType.Number && reader.TryGetInt64(out var number)) picometres = number;
            else throw new JsonException(Messages.LengthJsonExpected);
        }

        return picometres is { } found ? Length.FromPicometres(found) : throw new JsonException(Messages.LengthJsonExpected);
    }
}
