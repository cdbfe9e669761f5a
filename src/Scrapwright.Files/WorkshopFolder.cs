using System.Text;
using Scrapwright.Core.Plans;

namespace Scrapwright.Files;

/// <summary>A workshop as a folder on disk.</summary>
public static class WorkshopFolder
{
    /// <summary>Reads the workshop in a folder: all of it, or every problem of every file. Never throws on what it finds there.</summary>
    /// <param name="path">The folder; its name becomes the workshop's.</param>
    public static FileOutcome<PlanRequest> Read(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        if (!Directory.Exists(path)) return Refused(path, File.Exists(path) ? "a file" : "no such folder", FileMessages.AFolder);
        var files = new Dictionary<string, byte[]>(StringComparer.Ordinal);
        var designs = Path.Combine(path, DesignFile.Folder);
        string[] names = [PileFile.Name, GiftsFile.Name, ShopFile.Name, ChoicesFile.Name];
        try
        {
            foreach (var name in names.Where(name => File.Exists(Path.Combine(path, name)))) files[name] = ReadStart(Path.Combine(path, name));
            if (Directory.Exists(designs))
            {
                foreach (var file in Directory.EnumerateFiles(designs, "*.json")) files[$"{DesignFile.Folder}/{Path.GetFileName(file)}"] = ReadStart(file);
            }
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return Refused(path, error.Message, "files that can be read");
        }

        return WorkshopFiles.Read(Path.GetFileName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(path))), files);
    }

    /// <summary>Writes a workshop into a folder, which is made if need be. Each file is replaced whole, never left half written; other files stay.</summary>
    /// <param name="path">The folder.</param>
    /// <param name="request">What to write.</param>
    /// <exception cref="IOException">The folder cannot be written to.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written to.</exception>
    public static void Write(string path, PlanRequest request)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        Directory.CreateDirectory(path);
        foreach (var (name, text) in WorkshopFiles.Write(request))
        {
            var target = Path.Combine(path, name);
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.WriteAllText(target + ".new", text, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
            File.Move(target + ".new", target, overwrite: true);
        }
    }

    // One byte more than is read at most tells that the file is too large without reading all of it.
    private static byte[] ReadStart(string file)
    {
        using var stream = File.OpenRead(file);
        var bytes = new byte[(int)Math.Min(stream.Length, FileText.MostBytes + 1L)];
        var count = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        return count == bytes.Length ? bytes : bytes[..count];
    }

    private static FileOutcome<PlanRequest>.Refused Refused(string path, string found, string expected) => new([new(path, 0, 0, found, expected)], 0);
}
