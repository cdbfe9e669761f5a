using System.Text.Json.Serialization;

namespace Scrapwright.Core.Shops;

/// <summary>A stretch of a day by the clock on the wall.</summary>
/// <param name="From">When work begins.</param>
/// <param name="Until">When it is over; midnight means the end of the day, otherwise later than the beginning.</param>
public sealed record HourRange(
    [property: JsonConverter(typeof(ClockTimeJsonConverter))] TimeOnly From,
    [property: JsonConverter(typeof(ClockTimeJsonConverter))] TimeOnly Until);
