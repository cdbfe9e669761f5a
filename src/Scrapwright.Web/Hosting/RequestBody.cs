using System.Text.Json;
using Scrapwright.Client.Api;
using Scrapwright.Core.Plans;

namespace Scrapwright.Web.Hosting;

/// <summary>Reads a JSON body as <see cref="PlanJson"/> writes it, and tells what is wrong with it by field.</summary>
internal static class RequestBody
{
    /// <summary>Most bytes of a JSON body.</summary>
    internal const int LargestBytes = 4_000_000;

    /// <summary>Most bytes taken off the wire in order to answer at all; beyond it the connection is cut.</summary>
    internal const int DrainedBytes = 64_000_000;

    /// <summary>Runs a handler on the body, or refuses the body.</summary>
    internal static async Task<IResult> WithBodyAsync<T>(this HttpRequest request, Func<T, Task<IResult>> handle)
        where T : class
    {
        if (!request.HasJsonContentType())
            return Answers.Refuse(StatusCodes.Status415UnsupportedMediaType, "The body is no JSON.", new FieldProblem("content-type", request.ContentType ?? "", "application/json"));
        var cancellationToken = request.HttpContext.RequestAborted;
        if (await ReadLimitedAsync(request, LargestBytes, cancellationToken) is not { } bytes) return TooLarge(LargestBytes);
        T? value;
        try
        {
            value = JsonSerializer.Deserialize<T>(bytes, PlanJson.Options);
        }
        catch (JsonException e)
        {
            return Answers.Refuse(StatusCodes.Status400BadRequest, "The body was not understood.", FieldOf<T>(e));
        }
        catch (Exception e) when (e is OverflowException or ArgumentException or FormatException or NotSupportedException)
        {
            return Answers.Refuse(StatusCodes.Status400BadRequest, "The body was not understood.", new FieldProblem("", "a value out of range", $"a {typeof(T).Name} as JSON"));
        }

        if (JsonNulls.Find(bytes) is { } field)
            return Answers.Refuse(StatusCodes.Status400BadRequest, "The body was not understood.", new FieldProblem(field, "null", "a value"));
        return value is null
            ? Answers.Refuse(StatusCodes.Status400BadRequest, "The body was not understood.", new FieldProblem("", "null", $"a {typeof(T).Name} as JSON"))
            : await handle(value);
    }

    /// <summary>The whole body, or null when it is larger; what is larger is read to its end, so that the answer gets through.</summary>
    internal static async Task<MemoryStream?> ReadLimitedStreamAsync(HttpRequest request, int largestBytes, CancellationToken cancellationToken)
    {
        var kept = new MemoryStream();
        var buffer = new byte[81_920];
        var tooLarge = request.ContentLength > largestBytes;
        for (int count; (count = await request.Body.ReadAsync(buffer, cancellationToken)) > 0;)
        {
            tooLarge |= kept.Length + count > largestBytes;
            if (!tooLarge) kept.Write(buffer, 0, count);
        }

        kept.Position = 0;
        return tooLarge ? null : kept;
    }

    /// <summary>The refusal of a body that is too large.</summary>
    internal static IResult TooLarge(int largestBytes) =>
        Answers.Refuse(StatusCodes.Status413PayloadTooLarge, "That is too much at once.", new FieldProblem("", "a larger body", $"at most {largestBytes / 1_000_000} MB"));

    private static async Task<byte[]?> ReadLimitedAsync(HttpRequest request, int largestBytes, CancellationToken cancellationToken)
    {
        using var stream = await ReadLimitedStreamAsync(request, largestBytes, cancellationToken);
        return stream?.ToArray();
    }

    private static FieldProblem FieldOf<T>(JsonException fault)
    {
        var path = (fault.Path ?? "").TrimStart('$').TrimStart('.');
        // The serializer's own words end in its position, which stands in the path already.
        var words = fault.Message.Split(" Path: ")[0];
        return new FieldProblem(path, words, $"a {typeof(T).Name} as JSON");
    }
}
