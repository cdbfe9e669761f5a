using Scrapwright.Client.Api;

namespace Scrapwright.Web.Hosting;

/// <summary>Refuses requests that a page of another site makes the browser send, and answers to names that are not ours.</summary>
internal static class SameSiteOnly
{
    internal static void UseSameSiteOnly(this WebApplication app, Predicate<string> isOurName)
    {
        app.Use(async (context, next) =>
        {
            var request = context.Request;
            if (!isOurName(request.Host.Host))
            {
                await Refuse("This name is not one of the machine's.", "host", request.Host.Host, "localhost, an address, or a name given with --hosts").ExecuteAsync(context);
                return;
            }

            var headers = context.Response.Headers;
            headers.XContentTypeOptions = "nosniff";
            headers["Referrer-Policy"] = "same-origin";
            headers.XFrameOptions = "DENY";
            if (!ReadsOnly(request.Method) && ForeignOrigin(request) is { } origin)
            {
                await Refuse("A page of another site may not change the workshop.", "origin", origin, "the same site").ExecuteAsync(context);
                return;
            }

            await next(context);
        });
    }

    private static bool ReadsOnly(string method) => HttpMethods.IsGet(method) || HttpMethods.IsHead(method) || HttpMethods.IsOptions(method);

    // Browsers send Origin with every change and Sec-Fetch-Site beside it; programs that are no browsers send neither.
    private static string? ForeignOrigin(HttpRequest request)
    {
        var site = request.Headers["Sec-Fetch-Site"].ToString();
        if (site is not ("" or "same-origin" or "none")) return site;
        var origin = request.Headers.Origin.ToString();
        if (origin.Length == 0) return null;
        return Uri.TryCreate(origin, UriKind.Absolute, out var uri) && string.Equals(uri.Authority, Authority(request), StringComparison.OrdinalIgnoreCase) ? null : origin;
    }

    private static string Authority(HttpRequest request) =>
        Uri.TryCreate($"{request.Scheme}://{request.Host}", UriKind.Absolute, out var uri) ? uri.Authority : request.Host.ToString();

    private static IResult Refuse(string title, string field, string found, string expected) =>
        Answers.Refuse(StatusCodes.Status403Forbidden, title, new FieldProblem(field, found, expected));
}
