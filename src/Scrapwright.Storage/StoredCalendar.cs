using Scrapwright.Core.Calendar;

namespace Scrapwright.Storage;

/// <summary>A calendar as kept.</summary>
/// <param name="Id">Which; grows.</param>
/// <param name="Created">When it was made, UTC.</param>
/// <param name="Json">The calendar as <see cref="CalendarJson.Write"/> writes it.</param>
/// <param name="Marks">The marks it was made with.</param>
public sealed record StoredCalendar(long Id, DateTime Created, string Json, CalendarMarks Marks);
