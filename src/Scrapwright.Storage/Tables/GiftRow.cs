using System.Collections.Immutable;
using System.Text.Json;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;

namespace Scrapwright.Storage.Tables;

/// <summary>One row of the table of gifts.</summary>
internal sealed class GiftRow
{
    public long Id { get; set; }

    public long Position { get; set; }

    public bool IsDeleted { get; set; }

    public string Label { get; set; } = "";

    public string Recipient { get; set; } = "";

    public string Circle { get; set; } = "";

    public string Design { get; set; } = "";

    public string OptionsJson { get; set; } = "{}";

    public DateOnly? Due { get; set; }

    public string Occasion { get; set; } = "";

    public int Priority { get; set; }

    public string Climate { get; set; } = "";

    public string Finish { get; set; } = "";

    public void Take(Gift gift)
    {
        Label = gift.Label;
        Recipient = gift.Recipient;
        Circle = gift.Circle;
        Design = gift.Design;
        OptionsJson = JsonSerializer.Serialize(gift.Options, PlanJson.Options);
        Due = gift.Due;
        Occasion = gift.Occasion.Trim();
        Priority = gift.Priority;
        Climate = gift.Climate;
        Finish = gift.Finish;
    }

    public StoredGift Stored() => new(Id, Gift());

    public Gift Gift() => new()
    {
        Label = Label,
        Recipient = Recipient,
        Circle = Circle,
        Design = Design,
        Options = JsonSerializer.Deserialize<ImmutableSortedDictionary<string, string>>(OptionsJson, PlanJson.Options)!,
        Due = Due,
        Occasion = Occasion,
        Priority = Priority,
        Climate = Climate,
        Finish = Finish,
    };
}
