using System.Text;
using Scrapwright.Cli.Output;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Worth;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Shops;
using Scrapwright.Files;
using Scrapwright.ICalendar;
using Scrapwright.Planning;
using Scrapwright.Planning.Calendar.Advice;
using Spectre.Console.Cli;

namespace Scrapwright.Cli.Commands;

/// <summary>Puts the work of a plan on the shop's evenings.</summary>
internal sealed class CalendarCommand(Terminal terminal) : AsyncCommand<CalendarSettings>
{
    private static readonly UTF8Encoding Plain = new(encoderShouldEmitUTF8Identifier: false);

    /// <inheritdoc/>
    public override async Task<int> ExecuteAsync(CommandContext context, CalendarSettings settings, CancellationToken cancellationToken)
    {
        var plan = FormerPlan.Read(settings.Plan);
        if (plan is not FileOutcome<Plan>.Read { Content: { } content }) return Refusal.Write(terminal, plan);
        var request = new CalendarRequest { Plan = content, HomeZone = TimeZoneInfo.Local, Start = DateTimeOffset.Now };
        if (settings.Workshop is { } folder)
        {
            var hours = WorkshopFolder.ReadHours(folder);
            if (hours is not FileOutcome<WorkHours>.Read { Content: { } known }) return Refusal.Write(terminal, hours);
            var workshop = ReadFolder.Read(folder, settings.StartByClock is { } from ? DateOnly.FromDateTime(from) : null);
            if (workshop is not FileOutcome<ReadFolder>.Read { Content: { } now }) return Refusal.Write(terminal, workshop);
            var notes = WorkshopFolder.ReadNotes(folder);
            if (notes is not FileOutcome<WorkshopNotes>.Read { Content: { } noted }) return Refusal.Write(terminal, notes);
            request = request with { Hours = known, Gifts = now.Dated.Gifts, Times = noted.Times, Prices = noted.Prices, Jigs = noted.Jigs, HourWorth = now.Dated.Shop.HourWorth };
        }

        if (settings.Before is { } former)
        {
            var before = CalendarReading.Read(former);
            if (before is not FileOutcome<WorkCalendar>.Read { Content: { } kept }) return Refusal.Write(terminal, before);
            request = request with { Before = kept };
        }

        if (settings.StartByClock is { } start && ShopZones.Find(request.Hours.TimeZone, request.HomeZone) is { } zone)
            request = request with { Start = ShopZones.Moment(zone, start) };
        try
        {
            OutFolder.Try(settings.Out);
            return await MakeAsync(request, settings);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return Refusal.Write(terminal, settings.Out, error.Message, "a folder that can be written to");
        }
    }

    private async Task<int> MakeAsync(CalendarRequest request, CalendarSettings settings)
    {
        using var stop = new StopSignal();
        var limits = new PlanLimits { Seconds = settings.Seconds, Deterministic = settings.Repeatable };
        var outcome = await CalendarMaker.MakeAsync(request, limits, new CalendarTicker(terminal), stop.Token);
        switch (outcome)
        {
            case CalendarOutcome.Dated dated:
                var written = Write(dated.Calendar, request, settings);
                foreach (var line in CalendarText.Lines(dated.Calendar, request.Plan)) await terminal.Out.WriteLineAsync(line);
                foreach (var line in PaceText.Lines(dated.Calendar.Times)) await terminal.Out.WriteLineAsync(line);
                foreach (var line in ChanceText.Lines(CalendarChances.Of(dated.Calendar))) await terminal.Out.WriteLineAsync(line);
                if (settings.Why) await WhyAsync(request, dated.Calendar, limits, stop.Token);
                await terminal.Out.WriteLineAsync($"Written: {string.Join(", ", written)}");
                break;
            case CalendarOutcome.Impossible impossible:
                await terminal.Out.WriteLineAsync($"{request.Plan.Request.Workshop}: the work does not fit into the time there is. Nothing was written.");
                foreach (var line in CalendarText.Reasons(impossible.Reasons)) await terminal.Out.WriteLineAsync(line);
                break;
            case CalendarOutcome.Unfinished:
                await terminal.Out.WriteLineAsync("Stopped before there was a calendar. Nothing was written.");
                break;
        }

        return ExitCodes.Of(outcome);
    }

    private async Task WhyAsync(CalendarRequest request, WorkCalendar calendar, PlanLimits limits, CancellationToken cancellationToken)
    {
        // Some fifteen questions share the time: four times the calendar's own is enough for the example, our own choice.
        var why = await CalendarAdviser.WhyAsync(request, calendar, limits with { Seconds = limits.Seconds * 4 }, null, cancellationToken);
        foreach (var line in CalendarWhyText.Lines(why)) await terminal.Out.WriteLineAsync(line);
        var worth = WorthAnswer.Of(WorthRequest.Of(request));
        foreach (var line in WorthText.Lines(worth, request.Plan)) await terminal.Out.WriteLineAsync(line);
    }

    private static List<string> Write(WorkCalendar calendar, CalendarRequest request, CalendarSettings settings)
    {
        List<string> written = [Path.Combine(settings.Out, "calendar.json"), Path.Combine(settings.Out, CalendarFile.Name)];
        using var files = new NewFiles();
        files.Add(written[0], stream => stream.Write(Plain.GetBytes(CalendarJson.Write(calendar).ReplaceLineEndings("\n") + "\n")));
        files.Add(written[1], stream => stream.Write(Plain.GetBytes(CalendarFile.Write(calendar, request.Plan.Request.Workshop, DateTimeOffset.UtcNow, request.Before))));
        var weeks = Path.Combine(settings.Out, "week.pdf");
        if (Printing.AddWeeks(files, weeks, calendar, request.Plan, Printing.Paper(settings.Paper, request.Plan.Request.Shop))) written.Add(weeks);
        files.Keep();
        return written;
    }
}
