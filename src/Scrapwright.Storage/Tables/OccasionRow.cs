using Scrapwright.Core.Gifts;

namespace Scrapwright.Storage.Tables;

/// <summary>One row of the table of occasions.</summary>
internal sealed class OccasionRow
{
    public long Id { get; set; }

    public bool IsDeleted { get; set; }

    public string Name { get; set; } = "";

    public DateOnly Date { get; set; }

    /// <summary>How it comes back, in words.</summary>
    public string Repeats { get; set; } = "";

    public string Note { get; set; } = "";

    public void Take(Occasion occasion)
    {
        Name = occasion.Name.Trim();
        Date = occasion.Date;
        Repeats = RepetitionWords.Write(occasion.Repeats);
        Note = occasion.Note;
    }

    public StoredOccasion Stored() => new(Id, Occasion());

    public Occasion Occasion() => new() { Name = Name, Date = Date, Repeats = RepetitionWords.Find(Repeats, Date) ?? new Repetition.Never(), Note = Note };
}
