using Scrapwright.Core.Shops;

namespace Scrapwright.Storage.Tables;

/// <summary>One row of the table of readings of time.</summary>
internal sealed class TimeRow
{
    public long Id { get; set; }

    public DateOnly Date { get; set; }

    public Operation Operation { get; set; }

    public string Setting { get; set; } = "";

    public int PlannedMinutes { get; set; }

    public int TookMinutes { get; set; }

    public string Note { get; set; } = "";

    public static TimeRow Of(TimeReading reading) => new()
    {
        Date = reading.Date,
        Operation = reading.Operation,
        Setting = reading.Setting,
        PlannedMinutes = reading.PlannedMinutes,
        TookMinutes = reading.TookMinutes,
        Note = reading.Note,
    };

    public StoredTime Stored() => new(Id, new TimeReading(Date, Operation, PlannedMinutes, TookMinutes) { Setting = Setting, Note = Note });
}
