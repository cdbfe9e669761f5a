using System.Text.Json;

namespace Scrapwright.Web.Hosting;

/// <summary>Finds null where the serializer lets it pass: as an item of a list, or as the text of an option.</summary>
internal static class JsonNulls
{
    private const string OptionsName = "options";

    /// <summary>Name of the first list or option with a null in it, or null.</summary>
    internal static string? Find(ReadOnlySpan<byte> json)
    {
        var reader = new Utf8JsonReader(json);
        var around = new Stack<(bool IsList, string Name)>();
        var name = "";
        while (reader.Read())
        {
            switch (reader.TokenType)
            {
                case JsonTokenType.PropertyName:
                    name = reader.GetString()!;
                    break;
                case JsonTokenType.StartArray or JsonTokenType.StartObject:
                    around.Push((reader.TokenType == JsonTokenType.StartArray, name));
                    break;
                case JsonTokenType.EndArray or JsonTokenType.EndObject:
                    around.Pop();
                    break;
                case JsonTokenType.Null when around.TryPeek(out var inside) && inside.IsList:
                    return inside.Name;
                case JsonTokenType.Null when around.TryPeek(out var inside) && inside.Name == OptionsName:
                    return $"{OptionsName}.{name}";
            }
        }

        return null;
    }
}
