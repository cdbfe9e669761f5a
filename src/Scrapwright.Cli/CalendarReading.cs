using System.Text.Json;
using Scrapwright.Core.Calendar;
using Scrapwright.Files;

namespace Scrapwright.Cli;

/// <summary>Reads a calendar from a file that may be anything.</summary>
internal static class CalendarReading
{
    /// <summary>The calendar, or why the file is none.</summary>
    internal static FileOutcome<WorkCalendar> Read(string path) => JsonReading.Read(path, "a calendar.json", "a calendar.json as scrapwright calendar writes it", CalendarJson.Read);
}
