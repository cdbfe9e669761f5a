namespace Scrapwright.Core.Wood;

/// <summary>How long wood takes to settle: an estimate and its range. <c>default</c> is no time.</summary>
/// <param name="Days">The estimate. [d]</param>
/// <param name="LeastDays">Half of it. [d]</param>
/// <param name="MostDays">Twice it. [d]</param>
public readonly record struct AcclimatisationTime(double Days, double LeastDays, double MostDays)
{
    /// <summary>The range in words, for example <c>about 1 to 4 weeks (estimate)</c>: days up to 13 days, then weeks up to 13 weeks, then months of 30 days; whole numbers, halves up.</summary>
    public string InWords
    {
        get
        {
            (string unit, double days) = MostDays switch
            {
                // Our own choice: which unit is easily read.
                < 14 => ("day", 1.0),
                < 14 * 7 => ("week", 7.0),
                _ => ("month", 30.0),
            };
            int least = Rounded(LeastDays / days), most = Rounded(MostDays / days);
            string plural = most == 1 ? unit : unit + "s";
            return least == most ? $"about {most} {plural} (estimate)" : $"about {least} to {most} {plural} (estimate)";
        }
    }

    private static int Rounded(double value) => Math.Max(1, (int)Math.Floor(value + 1.0 / 2));
}
