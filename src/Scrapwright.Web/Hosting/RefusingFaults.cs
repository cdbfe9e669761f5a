using Microsoft.AspNetCore.Diagnostics;
using Scrapwright.Storage;

namespace Scrapwright.Web.Hosting;

/// <summary>What goes wrong is told to the page in one form, never with a stack trace; the log has that.</summary>
internal static partial class RefusingFaults
{
    internal static void UseRefusingFaults(this WebApplication app)
    {
        app.UseExceptionHandler(handler => handler.Run(async context =>
        {
            var fault = context.Features.Get<IExceptionHandlerFeature>()?.Error;
            await Answer(fault, app.Logger).ExecuteAsync(context);
        }));
        app.UseStatusCodePages(async pages =>
        {
            var context = pages.HttpContext;
            if (!context.Request.Path.StartsWithSegments("/api")) return;
            await Answers.Refuse(context.Response.StatusCode, TitleOf(context.Response.StatusCode)).ExecuteAsync(context);
        });
    }

    private static IResult Answer(Exception? fault, ILogger logger)
    {
        switch (fault)
        {
            case BadHttpRequestException bad:
                return Answers.Refuse(bad.StatusCode, TitleOf(bad.StatusCode));
            case WorkshopUnreadableException unreadable:
                LogUnreadable(logger, unreadable);
                return Answers.Refuse(StatusCodes.Status503ServiceUnavailable, unreadable.Message);
            default:
                LogFault(logger, fault);
                return Answers.Refuse(StatusCodes.Status500InternalServerError, "The program made a mistake. The workshop is unchanged; the program's log says more.");
        }
    }

    private static string TitleOf(int status) => status switch
    {
        StatusCodes.Status404NotFound => "There is nothing at this address.",
        StatusCodes.Status413PayloadTooLarge => "That is too much at once.",
        StatusCodes.Status415UnsupportedMediaType => "The body is of a kind that is not read here.",
        _ => "The request was not understood.",
    };

    [LoggerMessage(Level = LogLevel.Error, Message = "A request failed.")]
    private static partial void LogFault(ILogger logger, Exception? fault);

    [LoggerMessage(Level = LogLevel.Error, Message = "The workshop cannot be used.")]
    private static partial void LogUnreadable(ILogger logger, Exception fault);
}
