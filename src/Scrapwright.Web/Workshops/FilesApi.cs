using System.IO.Compression;
using Microsoft.AspNetCore.Http.Features;
using Scrapwright.Client.Api;
using Scrapwright.Files;
using Scrapwright.Storage;
using Scrapwright.Web.Hosting;

namespace Scrapwright.Web.Workshops;

/// <summary>The files of a workshop over HTTP, in and out.</summary>
internal static class FilesApi
{
    private const int LargestUpload = 24_000_000;

    internal static void MapFiles(this IEndpointRouteBuilder app)
    {
        app.MapGet(ApiRoutes.Export, async (WorkshopStore store, CancellationToken cancellationToken) =>
            TypedResults.File(Zip(await WriteAsync(store, cancellationToken)), "application/zip", "workshop.zip"));

        app.MapPost(ApiRoutes.Import, ImportAsync);
    }

    private static async Task<IResult> ImportAsync(HttpRequest request, WorkshopStore store, CancellationToken cancellationToken)
    {
        if (!request.HasFormContentType)
            return Answers.Refuse(StatusCodes.Status415UnsupportedMediaType, "These are no files.", new FieldProblem("content-type", request.ContentType ?? "", "multipart/form-data"));
        if (request.ContentLength > LargestUpload)
        {
            await request.Body.CopyToAsync(Stream.Null, cancellationToken);
            return RequestBody.TooLarge(LargestUpload);
        }

        IFormCollection form;
        try
        {
            form = await request.ReadFormAsync(new FormOptions { MultipartBodyLengthLimit = LargestUpload, ValueLengthLimit = 10_000 }, cancellationToken);
        }
        catch (InvalidDataException)
        {
            return Answers.Refuse(StatusCodes.Status400BadRequest, "These are no files.", new FieldProblem("", "a body that breaks off or has too much in it", "files as multipart/form-data"));
        }

        var upload = await Upload.GatherAsync(form.Files, cancellationToken);
        if (!upload.Problems.IsEmpty) return Answers.Invalid(upload.Problems);
        var reading = ReadUpload.Of(upload, await store.GetListedAsync(cancellationToken), await store.GetYearsAsync(cancellationToken));
        if (!reading.Problems.IsEmpty) return Answers.Invalid(reading.Problems);
        if (reading.Contents is { Shop: { } shop, Gifts: null })
        {
            var lost = GiftRules.CheckClimates((await store.ListGiftsAsync(cancellationToken)).Select(stored => stored.Gift), shop);
            if (!lost.IsEmpty) return Answers.Invalid(lost.AsFields($"{ShopFile.Name} "));
        }

        if (reading.Contents is { Occasions: { } occasions, Gifts: null })
        {
            var lost = GiftRules.CheckOccasions((await store.ListGiftsAsync(cancellationToken)).Select(stored => stored.Gift), occasions);
            if (!lost.IsEmpty) return Answers.Invalid(lost.AsFields($"{OccasionsFile.Name} "));
        }

        return await Answers.OfAsync(await store.ReplaceAsync(reading.Contents, cancellationToken: cancellationToken), () => Task.FromResult(Answers.Ok(reading.Result)));
    }

    private static async Task<IEnumerable<KeyValuePair<string, string>>> WriteAsync(WorkshopStore store, CancellationToken cancellationToken) => WorkshopFiles.Write(
        await store.GetListedAsync(cancellationToken), await store.GetHoursAsync(cancellationToken), await store.GetYearsAsync(cancellationToken),
        new WorkshopNotes { Times = [.. (await store.ListTimesAsync(cancellationToken)).Select(t => t.Reading)], Prices = await store.GetPricesAsync(cancellationToken), Jigs = await store.GetJigsAsync(cancellationToken) });

    private static byte[] Zip(IEnumerable<KeyValuePair<string, string>> files)
    {
        var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var (name, text) in files)
            {
                using var writer = new StreamWriter(zip.CreateEntry(name).Open());
                writer.Write(text);
            }
        }

        return stream.ToArray();
    }
}
