using System.Globalization;
using System.Text.Json;
using System.Text.Json.Serialization;

namespace Scrapwright.Core.Measures;

/// <summary>Writes a volume as a string of decimal digits, in cubic picometres: beyond what a JSON number holds exactly.</summary>
public sealed class VolumeJsonConverter : JsonConverter<Volume>
{
    /// <inheritdoc/>
    public override Volume Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        if (reader.TokenType == JsonTokenType.String
            && Int128.TryParse(reader.GetString(), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var picometres))
            return Volume.FromCubicPicometres(picometres);
        throw new JsonException(Messages.VolumeJsonExpected);
    }

    /// <inheritdoc/>
    public override void Write(Utf8JsonWriter writer, Volume value, JsonSerializerOptions options)
    {
        ArgumentNullException.ThrowIfNull(writer);
        writer.WriteStringValue(value.CubicPicometres.ToString(CultureInfo.InvariantCulture));
    }
}
