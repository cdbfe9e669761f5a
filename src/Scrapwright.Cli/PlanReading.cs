using System.Text;
using System.Text.Json;
using Scrapwright.Core.Plans;
using Scrapwright.Files;

namespace Scrapwright.Cli;

/// <summary>Reads a plan from a file that may be anything.</summary>
internal static class PlanReading
{
    private const int MostBytes = 64 * 1024 * 1024;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The plan, or why the file is none.</summary>
    internal static FileOutcome<Plan> Read(string path)
    {
        FileOutcome<Plan> Refused(int line, int column, string found, string expected) =>
            new FileOutcome<Plan>.Refused([new FileProblem(path, line, column, found, expected)], 0);
        try
        {
            var file = new FileInfo(path);
            if (!file.Exists) return Refused(0, 0, Directory.Exists(path) ? "a folder" : "no such file", "a plan.json");
            if (file.Length > MostBytes) return Refused(0, 0, "more than 64 MB", "a plan.json");
            var text = Strict.GetString(File.ReadAllBytes(path));
            return new FileOutcome<Plan>.Read(PlanJson.Read(text.TrimStart('\uFEFF')), []);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return Refused(0, 0, error.Message, "a file that can be read");
        }
        catch (DecoderFallbackException)
        {
            return Refused(0, 0, "bytes that are no UTF-8 text", "a plan.json");
        }
        catch (JsonException error)
        {
            return Refused((int)(error.LineNumber + 1 ?? 0), (int)(error.BytePositionInLine + 1 ?? 0), Sentence(error), "a plan.json as scrapwright plan writes it");
        }
        catch (Exception error) when (error is NotSupportedException or ArgumentException or OverflowException or FormatException)
        {
            return Refused(0, 0, Sentence(error), "a plan.json as scrapwright plan writes it");
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
