using Scrapwright.Client.Api;
using Scrapwright.Core.Measures;
using Scrapwright.Files;
using Scrapwright.Storage;

namespace Scrapwright.Web.Workshops;

/// <summary>The example workshop over HTTP.</summary>
internal static class ExampleApi
{
    internal static void MapExample(this IEndpointRouteBuilder app) =>
        app.MapPost(ApiRoutes.Example, async (HttpRequest request, WorkshopStore store, CancellationToken cancellationToken) =>
        {
            var replace = string.Equals(request.Query["replace"], "true", StringComparison.OrdinalIgnoreCase);
            var outcome = await store.ReplaceAsync(Contents(), onlyWhenEmpty: !replace, cancellationToken);
            return await Answers.OfAsync(outcome, async () => Answers.Ok(await WorkshopApi.SummaryAsync(store, cancellationToken)));
        });

    private static WorkshopContents Contents()
    {
        var example = ExampleWorkshop.Listed;
        return new WorkshopContents
        {
            Name = example.Workshop,
            Pile = [.. example.Pile.Select(o => new NewOffcut(o, LengthUnit.Inch))],
            Gifts = example.Gifts,
            Occasions = ExampleWorkshop.Years.Occasions,
            Given = ExampleWorkshop.Years.Given,
            Shop = example.Shop,
            Hours = ExampleWorkshop.Hours,
            Times = [],
            Prices = [],
            Jigs = [],
            Designs = example.Designs,
            Choices = example.Choices,
        };
    }
}
