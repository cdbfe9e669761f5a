using System.Text.Json;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Plans;

namespace Scrapwright.Storage.Tables;

/// <summary>One calendar and the marks it was made with, as documents.</summary>
internal sealed class CalendarRow
{
    public long Id { get; set; }

    public DateTime Created { get; set; }

    public string Json { get; set; } = "";

    public string Marks { get; set; } = "";

    public StoredCalendar Stored() => new(Id, DateTime.SpecifyKind(Created, DateTimeKind.Utc), Json, JsonSerializer.Deserialize<CalendarMarks>(Marks, PlanJson.Options)!);
}
