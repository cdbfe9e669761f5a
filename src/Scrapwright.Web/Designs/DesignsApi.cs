using Scrapwright.Client.Api;
using Scrapwright.Core.Designs;
using Scrapwright.Files;
using Scrapwright.Storage;
using Scrapwright.Web.Hosting;

namespace Scrapwright.Web.Designs;

/// <summary>The designs over HTTP.</summary>
internal static class DesignsApi
{
    internal static void MapDesigns(this IEndpointRouteBuilder app)
    {
        app.MapGet(ApiRoutes.Designs, async (WorkshopStore store, CancellationToken cancellationToken) =>
            Answers.Ok(DesignCatalogue.BuiltIn.Concat(await store.ListDesignsAsync(cancellationToken))));

        app.MapPut(ApiRoutes.Designs + "/{key}", (string key, HttpRequest request, WorkshopStore store, CancellationToken cancellationToken) =>
            request.WithBodyAsync<Design>(async design =>
            {
                if (IsBuiltIn(key)) return BuiltIn(key);
                var checks = new ValueChecks();
                checks.Require(design.Key == key, "key", design.Key, key);
                checks.Require(IsKey(key), "key", key, "1 to 40 lower-case letters, digits or hyphens");
                checks.Text("title", design.Title, 80, mayBeEmpty: false);
                checks.Require(DesignCatalogue.FindFamily(design.Family) is not null, "family", design.Family, $"one of {string.Join(", ", DesignCatalogue.Families.Select(f => f.Key))}");
                checks.Texts("options", design.Options);
                if (checks.Problems.AsFields() is { Length: > 0 } problems) return Answers.Invalid(problems);
                await store.PutDesignAsync(design, cancellationToken);
                return Answers.Ok(design);
            }));

        app.MapDelete(ApiRoutes.Designs + "/{key}", async (string key, WorkshopStore store, CancellationToken cancellationToken) =>
            IsBuiltIn(key) ? BuiltIn(key)
            : await store.DeleteDesignAsync(key, cancellationToken) ? Answers.Nothing()
            : Answers.Missing("design", key));
    }

    private static bool IsBuiltIn(string key) => DesignCatalogue.BuiltIn.Any(d => string.Equals(d.Key, key, StringComparison.OrdinalIgnoreCase));

    private static bool IsKey(string key) =>
        key.Length is > 0 and <= 40 && key.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-');

    private static IResult BuiltIn(string key) =>
        Answers.Refuse(StatusCodes.Status409Conflict, "A built-in design cannot be changed.", new FieldProblem("key", key, "a key of your own"));
}
