using System.Collections.Immutable;
using Scrapwright.Client.Api;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Sheets;
using Scrapwright.Paper;
using Scrapwright.Storage;

namespace Scrapwright.Web.Planning;

/// <summary>The latest plan on paper over HTTP.</summary>
internal static class PaperApi
{
    private static readonly ImmutableArray<PaperSize> Papers = [PaperSize.Letter, PaperSize.A4];

    internal static void MapPaper(this IEndpointRouteBuilder app)
    {
        app.MapGet(ApiRoutes.PlanSheets, (string? paper, WorkshopStore store, CancellationToken cancellationToken) =>
            PdfAsync(paper, BenchSheets.For, "bench-sheets.pdf", store, cancellationToken));
        app.MapGet(ApiRoutes.PlanLabels, (string? paper, WorkshopStore store, CancellationToken cancellationToken) =>
            PdfAsync(paper, StripLabels.For, "strip-labels.pdf", store, cancellationToken));
    }

    private static async Task<IResult> PdfAsync(
        string? paper, Func<Plan, PaperSize, ImmutableArray<Sheet>> draw, string name, WorkshopStore store, CancellationToken cancellationToken)
    {
        var words = Papers.Select(p => p.Name.ToLowerInvariant());
        if (Papers.FirstOrDefault(p => string.Equals(p.Name, paper ?? PaperSize.Letter.Name, StringComparison.OrdinalIgnoreCase)) is not { } size)
            return Answers.Invalid([new FieldProblem("paper", paper ?? "", string.Join(" or ", words))]);
        if (await store.FindLatestPlanAsync(cancellationToken) is not { } stored)
            return Answers.Refuse(StatusCodes.Status404NotFound, "There is no plan yet.");
        var sheets = draw(PlanJson.Read(stored.Json), size);
        if (sheets.IsEmpty) return Answers.Refuse(StatusCodes.Status404NotFound, "The plan has nothing to print here.");
        var pdf = new MemoryStream();
        PdfWriter.Write(sheets, pdf);

        // Shown in the browser, under this name when it is saved.
        return new InlinePdf(pdf.ToArray(), name);
    }
}
