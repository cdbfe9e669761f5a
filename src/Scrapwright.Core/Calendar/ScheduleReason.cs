namespace Scrapwright.Core.Calendar;

/// <summary>Why tasks do not fit.</summary>
/// <param name="Where">Id of the task, delivery or resource.</param>
/// <param name="Found">What there is.</param>
/// <param name="Expected">What would do.</param>
public sealed record ScheduleReason(string Where, string Found, string Expected);
