using System.Collections.Immutable;
using System.IO.Compression;
using Scrapwright.Client.Api;
using Scrapwright.Files;

namespace Scrapwright.Web.Workshops;

/// <summary>Uploaded files by their names in a workshop folder, with zip files unpacked.</summary>
/// <param name="Files">The files of a workshop.</param>
/// <param name="Problems">What cannot be used.</param>
internal sealed record Upload(ImmutableSortedDictionary<string, byte[]> Files, ImmutableArray<FieldProblem> Problems)
{
    private const int MostFiles = 500;
    private const long MostUnpackedBytes = 48_000_000;
    private const string Expected = "pile.csv, gifts.csv, occasions.csv, given.csv, shop.json, hours.json, times.csv, prices.csv, jigs.csv, choices.json, a design as .json, or a zip of them";

    internal static async Task<Upload> GatherAsync(IFormFileCollection uploaded, CancellationToken cancellationToken)
    {
        var files = ImmutableSortedDictionary.CreateBuilder<string, byte[]>(StringComparer.Ordinal);
        var problems = ImmutableArray.CreateBuilder<FieldProblem>();
        foreach (var file in uploaded)
        {
            var bytes = new byte[file.Length];
            await using (var stream = file.OpenReadStream()) await stream.ReadExactlyAsync(bytes, cancellationToken);
            var name = Path.GetFileName(file.FileName);
            if (name.EndsWith(".zip", StringComparison.OrdinalIgnoreCase)) await UnpackAsync(name, bytes, files, problems, cancellationToken);
            else if (PlaceOf(name) is { } place) files[place] = bytes;
            else problems.Add(new("file", name, Expected));
        }

        if (files.Count == 0 && problems.Count == 0) problems.Add(new("files", "nothing of a workshop", Expected));
        return new Upload(files.ToImmutable(), problems.ToImmutable());
    }

    private static async Task UnpackAsync(
        string name, byte[] bytes, ImmutableSortedDictionary<string, byte[]>.Builder files, ImmutableArray<FieldProblem>.Builder problems, CancellationToken cancellationToken)
    {
        try
        {
            using var zip = new ZipArchive(new MemoryStream(bytes), ZipArchiveMode.Read);
            var unpacked = 0L;
            foreach (var entry in zip.Entries.Take(MostFiles))
            {
                // What else lies in the folder is none of ours.
                if (PlaceOf(entry.Name) is not { } place || (place.Contains('/', StringComparison.Ordinal) && !IsInDesigns(entry.FullName))) continue;
                using var content = new MemoryStream();
                await using var stream = await entry.OpenAsync(cancellationToken);
                var buffer = new byte[81_920];
                for (int count; (count = await stream.ReadAsync(buffer, cancellationToken)) > 0;)
                {
                    // The sizes in a zip's own list may be untrue.
                    if ((unpacked += count) > MostUnpackedBytes)
                    {
                        problems.Add(new(name, "more than that unpacked", $"at most {MostUnpackedBytes / 1_000_000} MB"));
                        return;
                    }

                    content.Write(buffer, 0, count);
                }

                files[place] = content.ToArray();
            }
        }
        catch (InvalidDataException)
        {
            problems.Add(new(name, "a damaged file", "a zip"));
        }
    }

    private static bool IsInDesigns(string path) => path.Replace('\\', '/').Split('/') is [.., DesignFile.Folder, _];

    private static string? PlaceOf(string name) => name switch
    {
        PileFile.Name or GiftsFile.Name or OccasionsFile.Name or GivenFile.Name or ShopFile.Name or HoursFile.Name or TimesFile.Name or PricesFile.Name or JigsFile.Name or ChoicesFile.Name => name,
        _ when name.EndsWith(".json", StringComparison.OrdinalIgnoreCase) => $"{DesignFile.Folder}/{name}",
        _ => null,
    };
}
