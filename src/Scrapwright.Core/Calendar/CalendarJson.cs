using System.Text.Json;
using Scrapwright.Core.Plans;

namespace Scrapwright.Core.Calendar;

/// <summary>How calendars are written as JSON: as plans are, moments with their difference from UTC.</summary>
public static class CalendarJson
{
    /// <summary>A calendar as a file's text.</summary>
    public static string Write(WorkCalendar calendar) => JsonSerializer.Serialize(calendar, PlanJson.Indented);

    /// <summary>A calendar from a file's text.</summary>
    /// <exception cref="JsonException">Not a calendar; line, position and path say where.</exception>
    public static WorkCalendar Read(string text) =>
        JsonSerializer.Deserialize<WorkCalendar>(text, PlanJson.Options) ?? throw new JsonException("Expected a calendar, found null.");
}
