namespace Scrapwright.Web.Planning;

/// <summary>A PDF that the browser shows itself, with the name to save it under.</summary>
internal sealed class InlinePdf(byte[] bytes, string name) : IResult
{
    public Task ExecuteAsync(HttpContext httpContext)
    {
        httpContext.Response.Headers.ContentDisposition = $"inline; filename=\"{name}\"";
        return TypedResults.Bytes(bytes, "application/pdf").ExecuteAsync(httpContext);
    }
}
