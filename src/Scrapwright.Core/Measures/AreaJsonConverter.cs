using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Scrapwright.Core.Measures;

/// <summary>Writes a area as a string of decimal digits, in square picometres: beyond what a JSON number holds exactly.</summary>
public sealed class AreaJsonConverter : JsonConverter<Area>
{
    /// <inheritdoc/>
    public override Area Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType == JsonTokenType.String
            && Int128.TryParse(reader.GetString(), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var picometres))
            return Area.FromSquarePicometres(picometres);
        throw new JsonException(Messages.AreaJsonExpected);
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, Area value, JsonSerializerOptions options)
    {
        ArgumentNullException.ThrowIfNull(writer);
        writer.WriteStringValue(value.SquarePicometres.ToString(CultureInfo.InvariantCulture));
    }
}
