using System.Collections.Immutable;
using System.Globalization;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Finishing;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Shops;

namespace Scrapwright.Planning.Calendar.Advice;

/// <summary>All requests with one thing otherwise that are worth a try.</summary>
internal sealed class CalendarVariants
{
    // The quickest few glues and finishes are enough to choose from, and so are the next few days: our own choice.
    private const int MostOfATable = 2;
    private const int MostDays = 3;

    private readonly CalendarRequest request;
    private readonly WorkCalendar calendar;
    private readonly string[] late;
    private readonly WorthVariants worth;

    internal CalendarVariants(CalendarRequest request, WorkCalendar calendar)
    {
        (this.request, this.calendar) = (request with { Before = null }, calendar);
        late = [.. calendar.Gifts.Where(g => g.IsLate).Select(g => g.Gift)];
        worth = new(this.request, late);
    }

    private Shop Shop => request.Plan.Request.Shop;

    private IEnumerable<Gift> LateGifts => late.Select(label => request.Plan.Request.Gifts.FirstOrDefault(g => g.Label == label)).OfType<Gift>();

    /// <summary>Ways out of late dates first, then what tells about the shop, last what takes a plan of its own and so most time.</summary>
    internal IEnumerable<CalendarVariant> All() => late.Length == 0 ? OfTheShop() : [.. worth.Bought(), .. LeavingOut(), .. OneEvening(), .. GiftFinishes(), .. OfTheShop(), .. new OtherDesigns(request).For(LateGifts)];

    private IEnumerable<CalendarVariant> OfTheShop() => [.. WeeklyEvenings(), .. MachineHours(), .. Helper(), .. Clamps(), .. Finishes(), .. Glues(), .. worth.Jigs()];

    private IEnumerable<CalendarVariant> Helper()
    {
        // Nine are the most a shop can have by definition.
        if (request.Hours.Makers < 9)
            yield return new(OtherwiseKind.Helper, "somebody who helps all the time", "Can somebody help", request with { Hours = request.Hours with { Makers = request.Hours.Makers + 1 } });
    }

    private IEnumerable<CalendarVariant> WeeklyEvenings()
    {
        if (UsualHours() is not { } hours) yield break;
        foreach (var day in FreeDays())
        {
            var week = request.Hours.Week.RemoveAll(d => d.Day == day).Add(new(day, hours));
            yield return new(OtherwiseKind.WeeklyEvening, $"every {day}, {Text(hours)}", $"Have you time every {day}, {Text(hours)}", request with { Hours = request.Hours with { Week = week } });
        }
    }

    private IEnumerable<CalendarVariant> OneEvening()
    {
        if (UsualHours() is not { } hours) yield break;
        var first = DateOnly.FromDateTime(calendar.Start.DateTime);
        var free = FreeDays().ToHashSet();
        // Definition: seven days a week.
        foreach (var day in Enumerable.Range(0, 7).Select(first.AddDays).Where(d => free.Contains(d.DayOfWeek) && !request.Hours.Exceptions.Any(e => d >= e.First && d <= e.Last)).Take(MostDays))
        {
            var name = day.ToString("dddd d MMMM", CultureInfo.InvariantCulture);
            yield return new(
                OtherwiseKind.OneEvening, $"{name}, {Text(hours)}", $"Have you time on {name}, {Text(hours)}",
                request with { Hours = request.Hours with { Exceptions = request.Hours.Exceptions.Add(new(day, day, hours)) } });
        }
    }

    private IEnumerable<CalendarVariant> MachineHours()
    {
        if (request.Hours.QuietFrom is not { } quiet || quiet.Hour >= 23) yield break;
        var later = quiet.AddHours(1);
        yield return new(
            OtherwiseKind.MachineHours, $"machines until {later:HH:mm} instead of {quiet:HH:mm}", $"May machines run until {later:HH:mm} instead of {quiet:HH:mm}",
            request with { Hours = request.Hours with { QuietFrom = later } });
    }

    private IEnumerable<CalendarVariant> Clamps() => Shop.Clamps.Index().Where(c => c.Item.Count > 0).Select(c => new CalendarVariant(
        OtherwiseKind.Clamps, $"{c.Item.Count} more clamps: {c.Item.Name}", $"Can you borrow {c.Item.Count} more clamps: {c.Item.Name}",
        With(Shop with { Clamps = Shop.Clamps.SetItem(c.Index, c.Item with { Count = c.Item.Count * 2 }) })));

    private IEnumerable<CalendarVariant> Glues()
    {
        if (GlueTable.Find(Shop.Glue) is not { } now || calendar.Tasks.All(t => t.Task.Clamps is null && t.Task.Operation != Operation.Assemble)) return [];
        return GlueTable.All.Where(g => g != now && g.ClampMinutes.Most <= now.ClampMinutes.Most && g.CureHours.Least <= now.CureHours.Least
                && (g.ClampMinutes.Most < now.ClampMinutes.Most || g.CureHours.Least < now.CureHours.Least))
            .OrderBy(g => g.CureHours.Least).ThenBy(g => g.ClampMinutes.Most).Take(MostOfATable)
            .Select(g => new CalendarVariant(OtherwiseKind.Glue, $"{g.Name} instead of {now.Name}", $"Would {g.Name} do instead of {now.Name}", With(Shop with { Glue = g.Key })));
    }

    private IEnumerable<CalendarVariant> Finishes()
    {
        var open = calendar.Tasks.Where(t => t.Task.Operation == Operation.Finish).SelectMany(t => t.Task.Gifts).ToHashSet(StringComparer.Ordinal);
        // A gift that names its own finish has it for a reason.
        if (!request.Plan.Request.Gifts.Any(g => open.Contains(g.Label) && g.Finish.Length == 0) || FinishTable.Find(Shop.Finish) is not { } now) return [];
        return Quicker(now).Select(f => new CalendarVariant(
            OtherwiseKind.Finish, $"{f.Name} instead of {now.Name}, for gifts that name no finish of their own", $"Would {f.Name} do instead of {now.Name} for the gifts that name no finish of their own", With(Shop with { Finish = f.Key })));
    }

    private IEnumerable<CalendarVariant> GiftFinishes()
    {
        foreach (var gift in LateGifts)
        {
            if (FinishTable.Find(FinishAdvice.KeyFor(gift, Shop)) is not { } now || Quicker(now).FirstOrDefault() is not { } quick) continue;
            var gifts = request.Plan.Request.Gifts.Replace(gift, gift with { Finish = quick.Key });
            yield return new(
                OtherwiseKind.GiftFinish, $"{gift.Label} finished with {quick.Name} instead of {now.Name}", $"Would {quick.Name} do for {gift.Label} instead of {now.Name}",
                request with { Plan = request.Plan with { Request = request.Plan.Request with { Gifts = gifts } } });
        }
    }

    // Late gifts, and those that count no more than the one that counts most among them; the least important first.
    private IEnumerable<CalendarVariant> LeavingOut()
    {
        var gifts = calendar.Problem.Deliveries.Select(d => request.FindGift(d.Id)).OfType<Gift>().ToArray();
        var most = gifts.Where(g => late.Contains(g.Label)).Select(g => g.Priority).DefaultIfEmpty(int.MaxValue).Min();
        return gifts.Where(g => g.Priority > most || late.Contains(g.Label)).OrderByDescending(g => g.Priority).Select(g => new CalendarVariant(
            OtherwiseKind.LeaveOut, $"without {g.Label}", $"Shall {g.Label} be left out (priority {g.Priority})", request, g));
    }

    private static IEnumerable<Finish> Quicker(Finish now) => FinishTable.All.Where(f => FinishSteps.WaitMinutes(f) < FinishSteps.WaitMinutes(now))
        .OrderBy(f => FinishSteps.WaitMinutes(f)).Take(MostOfATable);

    private CalendarRequest With(Shop shop) => request with { Plan = request.Plan with { Request = request.Plan.Request with { Shop = shop } } };

    private IEnumerable<DayOfWeek> FreeDays() => Enum.GetValues<DayOfWeek>().Where(day => !request.Hours.Week.Any(d => d.Day == day && !d.Hours.IsEmpty));

    // Those of the shortest day there is: an evening, not a Saturday.
    private ImmutableArray<HourRange>? UsualHours() => request.Hours.Week.Where(d => !d.Hours.IsEmpty)
        .OrderBy(d => d.Hours.Sum(r => (r.Until - r.From).TotalMinutes)).Select(d => (ImmutableArray<HourRange>?)d.Hours).FirstOrDefault();

    private static string Text(ImmutableArray<HourRange> hours) => string.Join(" and ", hours.Select(h => $"{h.From:HH:mm} to {h.Until:HH:mm}"));
}
