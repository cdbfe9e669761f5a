using System.Text;
using System.Text.Json;
using Scrapwright.Files;

namespace Scrapwright.Cli;

/// <summary>Reads what this program once wrote as JSON from a file that may be anything.</summary>
internal static class JsonReading
{
    private const int MostBytes = 64 * 1024 * 1024;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>What the file holds, or why it holds nothing of the kind.</summary>
    /// <param name="path">The file.</param>
    /// <param name="what">What it should be, in a word or two.</param>
    /// <param name="written">The same, and by what it is written.</param>
    /// <param name="read">Reads the text.</param>
    internal static FileOutcome<T> Read<T>(string path, string what, string written, Func<string, T> read)
    {
        FileOutcome<T> Refused(int line, int column, string found, string expected) =>
            new FileOutcome<T>.Refused([new FileProblem(path, line, column, found, expected)], 0);
        try
        {
            var file = new FileInfo(path);
            if (!file.Exists) return Refused(0, 0, Directory.Exists(path) ? "a folder" : "no such file", what);
            if (file.Length > MostBytes) return Refused(0, 0, "more than 64 MB", what);
            var text = Strict.GetString(File.ReadAllBytes(path));
            return new FileOutcome<T>.Read(read(text.TrimStart('\uFEFF')), []);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return Refused(0, 0, error.Message, "a file that can be read");
        }
        catch (DecoderFallbackException)
        {
            return Refused(0, 0, "bytes that are no UTF-8 text", what);
        }
        catch (JsonException error)
        {
            return Refused((int)(error.LineNumber + 1 ?? 0), (int)(error.BytePositionInLine + 1 ?? 0), Sentence(error), written);
        }
        catch (Exception error) when (error is NotSupportedException or ArgumentException or OverflowException or FormatException)
        {
            return Refused(0, 0, Sentence(error), written);
        }
    }

    // The reader's own sentence, without the place that it repeats after it.
    private static string Sentence(Exception error)
    {
        var sentence = error.Message.ReplaceLineEndings(" ");
        foreach (var tail in (string[])[" Path: ", " LineNumber: "])
        {
            var at = sentence.IndexOf(tail, StringComparison.Ordinal);
            if (at > 0) sentence = sentence[..at];
        }

        return sentence.TrimEnd('.', ' ');
    }
}
