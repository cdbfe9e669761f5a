using System.Text;
using System.Text.Json;

namespace Scrapwright.Files;

/// <summary>Where each value of a JSON text stands, by its path such as <c>$.clamps[0].reach</c>.</summary>
internal sealed class JsonPlaces
{
    private readonly Dictionary<string, (int Line, int Column)> places = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Notes every value; the text must be valid JSON.</summary>
    internal JsonPlaces(string text)
    {
        var bytes = Encoding.UTF8.GetBytes(text);
        var reader = new Utf8JsonReader(bytes, new JsonReaderOptions { AllowTrailingCommas = true, CommentHandling = JsonCommentHandling.Skip, MaxDepth = 64 });
        var frames = new Stack<(string Path, int Index)>();
        var property = "";
        var (line, lineStart, counted) = (1, 0, 0);
        while (reader.Read())
        {
            if (reader.TokenType == JsonTokenType.PropertyName)
            {
                property = reader.GetString() ?? "";
                continue;
            }

            if (reader.TokenType is JsonTokenType.EndObject or JsonTokenType.EndArray)
            {
                frames.Pop();
                continue;
            }

            var start = (int)reader.TokenStartIndex;
            for (; counted < start; counted++)
            {
                if (bytes[counted] == (byte)'\n') (line, lineStart) = (line + 1, counted + 1);
            }

            var path = "$";
            if (frames.Count > 0)
            {
                var (parent, index) = frames.Pop();
                path = index < 0 ? $"{parent}.{property}" : $"{parent}[{index}]";
                frames.Push((parent, index < 0 ? index : index + 1));
            }

            places[path] = (line, Encoding.UTF8.GetCharCount(bytes.AsSpan(lineStart, start - lineStart)) + 1);
            if (reader.TokenType == JsonTokenType.StartObject) frames.Push((path, -1));
            else if (reader.TokenType == JsonTokenType.StartArray) frames.Push((path, 0));
        }
    }

    /// <summary>The place of a path, or of the nearest value above it that was written.</summary>
    internal (int Line, int Column) Of(string path)
    {
        while (true)
        {
            if (places.TryGetValue(path, out var place)) return place;
            var cut = path.LastIndexOfAny(['.', '[']);
            if (cut < 0) return (1, 1);
            path = path[..cut];
        }
    }
}
