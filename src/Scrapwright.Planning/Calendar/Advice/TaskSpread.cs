using Scrapwright.Core.Calendar;

namespace Scrapwright.Planning.Calendar.Advice;

/// <summary>How long a task may take, and how long what it made may wait.</summary>
/// <param name="Name">Stands for its id.</param>
/// <param name="Least">When all goes well. [min]</param>
/// <param name="Likely">As planned. [min]</param>
/// <param name="Most">When it does not. [min]</param>
/// <param name="LeastWait">The shortest wait after it. [min]</param>
/// <param name="Wait">The planned one. [min]</param>
internal readonly record struct TaskSpread(ulong Name, int Least, int Likely, int Most, int LeastWait, int Wait)
{
    /// <summary>Of a task of a problem; what is not known of it does not stray.</summary>
    internal static TaskSpread Of(ScheduleTask task, WorkTask? work) => work is null
        ? new(Draws.Name(task.Id), task.Minutes, task.Minutes, task.Minutes, 0, 0)
        : new(Draws.Name(task.Id), Math.Min(work.LeastMinutes, task.Minutes), task.Minutes, Math.Max(work.MostMinutes, task.Minutes), work.LeastWaitMinutes ?? work.WaitMinutes, work.WaitMinutes);

    /// <summary>Minutes of one run, before the hours of the shop are looked at. [min], from zero</summary>
    internal int Minutes(ChanceRules rules, int run, double pace)
    {
        if (Most <= Least) return Likely;
        var drawn = Draws.Triangular(Draws.Even(rules.Seed, run, Name), Least, Likely, Most) * pace;
        return Math.Max(0, (int)Math.Round(Likely + (rules.SpreadFactor * (drawn - Likely)), MidpointRounding.AwayFromZero));
    }

    /// <summary>How much shorter than planned a wait of one run is. [min], from zero</summary>
    internal int Sooner(ChanceRules rules, int run) =>
        // Any figure of the band is as likely as any other. The name is turned round so that minutes and wait are drawn apart.
        LeastWait >= Wait ? 0 : (int)(Math.Min(1, rules.SpreadFactor) * (Wait - LeastWait) * Draws.Even(rules.Seed, run, ~Name));
}
