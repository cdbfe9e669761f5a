using System.Text;

namespace Scrapwright.Files;

/// <summary>Turns the bytes of a file into text, or says why they are none.</summary>
internal static class FileText
{
    internal const int MostBytes = 4 * 1024 * 1024;

    /// <summary>The text without byte order mark, or null with a problem noted.</summary>
    internal static string? Decode(ReadOnlySpan<byte> bytes, ProblemList problems)
    {
        if (bytes.Length > MostBytes)
        {
            problems.Add(0, 0, "more than 4 MB", FileMessages.SmallerFile);
            return null;
        }

        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xFE]) || bytes.StartsWith((ReadOnlySpan<byte>)[0xFE, 0xFF]) || LooksLikeUtf16(bytes))
        {
            problems.Add(0, 0, "UTF-16 text", FileMessages.Utf8);
            return null;
        }

        if (bytes.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF])) bytes = bytes[3..];
        return System.Text.Unicode.Utf8.IsValid(bytes) ? Check(Encoding.UTF8.GetString(bytes), problems) : ReportBytes(bytes, problems);
    }

    /// <summary>The same for text that is decoded already.</summary>
    internal static string? Check(string text, ProblemList problems)
    {
        if (text.Length > MostBytes)
        {
            problems.Add(0, 0, "more than 4 MB", FileMessages.SmallerFile);
            return null;
        }

        if (text.StartsWith('\uFEFF')) text = text[1..];
        for (var i = 0; i < text.Length; i++)
        {
            if (!char.IsControl(text[i]) || text[i] is '\t' or '\r' or '\n') continue;
            var (line, column) = PlaceOf(text, i);
            problems.Add(line, column, $"U+{(int)text[i]:X4}", FileMessages.PlainText);
            return null;
        }

        return text;
    }

    /// <summary>Line and column, from 1, of a position in a text.</summary>
    internal static (int Line, int Column) PlaceOf(ReadOnlySpan<char> text, int position)
    {
        var before = text[..position];
        return (before.Count('\n') + 1, position - before.LastIndexOf('\n'));
    }

    private static string? ReportBytes(ReadOnlySpan<byte> bytes, ProblemList problems)
    {
        var at = 0;
        while (at < bytes.Length && Rune.DecodeFromUtf8(bytes[at..], out _, out var length) == System.Buffers.OperationStatus.Done) at += length;
        var (line, column) = PlaceOf(Encoding.UTF8.GetString(bytes[..at]) + " ", Encoding.UTF8.GetCharCount(bytes[..at]));
        problems.Add(line, column, $"byte {bytes[at]:X2}", FileMessages.Utf8);
        return null;
    }

    // Without a byte order mark: every other byte is zero, as Latin letters are in UTF-16.
    private static bool LooksLikeUtf16(ReadOnlySpan<byte> bytes)
    {
        var start = bytes[..Math.Min(bytes.Length & ~1, 400)];
        if (start.Length < 8) return false;
        int even = 0, odd = 0;
        for (var i = 0; i < start.Length; i += 2)
        {
            if (start[i] == 0) even++;
            if (start[i + 1] == 0) odd++;
        }

        return Math.Max(even, odd) > start.Length / 4 && Math.Min(even, odd) < start.Length / 16;
    }
}
