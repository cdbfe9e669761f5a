using System.Collections.Immutable;
using System.Text.Json;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;

namespace Scrapwright.Storage.Tables;

/// <summary>One row of the table of what was given.</summary>
internal sealed class GivenRow
{
    public long Id { get; set; }

    public bool IsDeleted { get; set; }

    public DateOnly Date { get; set; }

    public string Occasion { get; set; } = "";

    public string Recipient { get; set; } = "";

    public string Circle { get; set; } = "";

    public string Design { get; set; } = "";

    public string OptionsJson { get; set; } = "{}";

    public string Note { get; set; } = "";

    public void Take(GivenGift given)
    {
        Date = given.Date;
        Occasion = given.Occasion.Trim();
        Recipient = given.Recipient.Trim();
        Circle = given.Circle;
        Design = given.Design;
        OptionsJson = JsonSerializer.Serialize(given.Options, PlanJson.Options);
        Note = given.Note;
    }

    public StoredGiven Stored() => new(Id, Given());

    public GivenGift Given() => new()
    {
        Date = Date,
        Occasion = Occasion,
        Recipient = Recipient,
        Circle = Circle,
        Design = Design,
        Options = JsonSerializer.Deserialize<ImmutableSortedDictionary<string, string>>(OptionsJson, PlanJson.Options)!,
        Note = Note,
    };
}
