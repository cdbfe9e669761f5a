using System.Collections.Immutable;
using System.Text.Json.Serialization;

namespace Scrapwright.Core.Shops;

/// <summary>When the shop is worked in, and by how many. They change no plan, only its calendar.</summary>
public sealed record WorkHours
{
    /// <summary>Name of the time zone in the IANA database, for example <c>Europe/Dublin</c>; empty for that of the machine the program runs on.</summary>
    public string TimeZone { get; init; } = "";

    /// <summary>The week; weekdays that are not named are off. Default: three evenings and a Saturday, invented.</summary>
    public ImmutableArray<DayHours> Week { get; init; } = ShopDefaults.Week;

    /// <summary>Days with other hours; of two that name the same day the later in the list counts.</summary>
    public ImmutableArray<OtherHours> Exceptions { get; init; } = [];

    /// <summary>No machines from this time on, until the next day's <see cref="QuietUntil"/>; null for no such time.</summary>
    [JsonConverter(typeof(ClockTimeJsonConverter))]
    public TimeOnly? QuietFrom { get; init; } = new(20, 0);

    /// <summary>No machines before this time; null for no such time.</summary>
    [JsonConverter(typeof(ClockTimeJsonConverter))]
    public TimeOnly? QuietUntil { get; init; } = new(8, 0);

    /// <summary>How many work at the same time; 1 to 9.</summary>
    public int Makers { get; init; } = 1;
}
