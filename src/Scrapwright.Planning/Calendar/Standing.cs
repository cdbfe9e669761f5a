using Google.OrTools.Sat;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Building;

namespace Scrapwright.Planning.Calendar;

/// <summary>A setting that may stand in a window, with the tasks that may lie in it.</summary>
internal sealed record Standing(int Key, ScheduleWindow Window, BoolVar Stands, IntVar From, IntVar To, IntVar Length, (int Task, BoolVar In)[] Tasks)
{
    /// <summary>What a placement says of it.</summary>
    internal void Suggest(CpModel model, PlacedTasks placement)
    {
        var here = Array.FindIndex(placement.SetUps, s => s.SetUp == Key && s.Start >= Window.Start && s.End <= Window.End);
        model.AddHint(Stands, here >= 0);
        foreach (var (task, isIn) in Tasks) model.AddHint(isIn, here >= 0 && placement.Start[task] >= Window.Start && placement.Start[task] < Window.End);
        var (from, to) = here >= 0 ? (placement.SetUps[here].Start, placement.SetUps[here].End) : (Window.Start, Window.Start);
        model.AddHint(From, from);
        model.AddHint(To, to);
        model.AddHint(Length, to - from);
    }
}
