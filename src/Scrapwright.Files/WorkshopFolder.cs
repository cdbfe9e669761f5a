using System.Text;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;

namespace Scrapwright.Files;

/// <summary>A workshop as a folder on disk.</summary>
public static class WorkshopFolder
{
    private static readonly string[] Names = [PileFile.Name, GiftsFile.Name, OccasionsFile.Name, GivenFile.Name, ShopFile.Name, HoursFile.Name, TimesFile.Name, PricesFile.Name, JigsFile.Name, ChoicesFile.Name];

    /// <summary>Reads the workshop in a folder: all of it, or every problem of every file. Never throws on what it finds there.</summary>
    /// <param name="path">The folder; its name becomes the workshop's.</param>
    public static FileOutcome<PlanRequest> Read(string path) =>
        Read(path, files => WorkshopFiles.Read(Path.GetFileName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(path))), files));

    /// <summary>Reads when the shop of a folder is worked in; the usual hours when it has no <c>hours.json</c>. Never throws on what it finds there.</summary>
    /// <param name="path">The folder.</param>
    public static FileOutcome<WorkHours> ReadHours(string path) => Read(path, WorkshopFiles.ReadHours);

    /// <summary>Reads the occasions of a folder and what was given; none where it has no such file. Never throws on what it finds there.</summary>
    /// <param name="path">The folder.</param>
    public static FileOutcome<GiftYears> ReadYears(string path) => Read(path, WorkshopFiles.ReadYears);

    /// <summary>Reads what changes no plan from a folder: times, prices and jigs; nothing of what is not there. Never throws on what it finds there.</summary>
    /// <param name="path">The folder.</param>
    public static FileOutcome<WorkshopNotes> ReadNotes(string path) => Read(path, WorkshopFiles.ReadNotes);

    /// <summary>Writes a workshop into a folder, which is made if need be. Each file is replaced whole, never left half written; other files stay.</summary>
    /// <param name="path">The folder.</param>
    /// <param name="request">What to write.</param>
    /// <param name="hours">When the shop is worked in; null to leave the folder's hours as they are.</param>
    /// <param name="years">Its occasions and what was given; null to leave those of the folder as they are.</param>
    /// <exception cref="IOException">The folder cannot be written to.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written to.</exception>
    public static void Write(string path, PlanRequest request, WorkHours? hours = null, GiftYears? years = null) => Write(path, WorkshopFiles.Write(request, hours, years));

    /// <summary>Writes files into a folder, which is made if need be. All are written beside their places before the first is replaced; none is ever half written.</summary>
    /// <param name="path">The folder.</param>
    /// <param name="files">Text of each file, by its name in a workshop.</param>
    /// <exception cref="IOException">The folder cannot be written to.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written to.</exception>
    public static void Write(string path, IReadOnlyDictionary<string, string> files)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        ArgumentNullException.ThrowIfNull(files);
        Directory.CreateDirectory(path);
        foreach (var (name, text) in files)
        {
            var target = Path.Combine(path, name);
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.WriteAllText(target + ".new", text, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        }

        foreach (var name in files.Keys) File.Move(Path.Combine(path, name) + ".new", Path.Combine(path, name), overwrite: true);
    }

    private static FileOutcome<T> Read<T>(string path, Func<Dictionary<string, byte[]>, FileOutcome<T>> understand)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        if (!Directory.Exists(path)) return Refused<T>(path, File.Exists(path) ? "a file" : "no such folder", FileMessages.AFolder);
        var files = new Dictionary<string, byte[]>(StringComparer.Ordinal);
        var designs = Path.Combine(path, DesignFile.Folder);
        try
        {
            foreach (var name in Names.Where(name => File.Exists(Path.Combine(path, name)))) files[name] = ReadStart(Path.Combine(path, name));
            if (Directory.Exists(designs))
            {
                foreach (var file in Directory.EnumerateFiles(designs, "*.json")) files[$"{DesignFile.Folder}/{Path.GetFileName(file)}"] = ReadStart(file);
            }
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return Refused<T>(path, error.Message, "files that can be read");
        }

        return understand(files);
    }

    // One byte more than is read at most tells that the file is too large without reading all of it.
    private static byte[] ReadStart(string file)
    {
        using var stream = File.OpenRead(file);
        var bytes = new byte[(int)Math.Min(stream.Length, FileText.MostBytes + 1L)];
        var count = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        return count == bytes.Length ? bytes : bytes[..count];
    }

    private static FileOutcome<T>.Refused Refused<T>(string path, string found, string expected) => new([new(path, 0, 0, found, expected)], 0);
}
