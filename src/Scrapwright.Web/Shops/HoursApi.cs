using Scrapwright.Client.Api;
using Scrapwright.Core.Shops;
using Scrapwright.Files;
using Scrapwright.Storage;
using Scrapwright.Web.Hosting;

namespace Scrapwright.Web.Shops;

/// <summary>When the shop is worked in, over HTTP.</summary>
internal static class HoursApi
{
    internal static void MapHours(this IEndpointRouteBuilder app)
    {
        app.MapGet(ApiRoutes.Hours, async (WorkshopStore store, CancellationToken cancellationToken) =>
            Answers.Ok(await store.GetHoursAsync(cancellationToken)));

        app.MapGet(ApiRoutes.HomeZone, () => Answers.Ok(new ZoneName(TimeZoneInfo.Local.Id)));

        app.MapPut(ApiRoutes.Hours, (HttpRequest request, WorkshopStore store, CancellationToken cancellationToken) =>
            request.WithBodyAsync<WorkHours>(async hours =>
            {
                if (HoursRules.Check(hours).AsFields() is { Length: > 0 } problems) return Answers.Invalid(problems);
                await store.PutHoursAsync(hours, cancellationToken);
                return Answers.Ok(hours);
            }));
    }
}
