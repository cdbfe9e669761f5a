namespace Scrapwright.Client.Api;

/// <summary>Addresses of the server's API, relative to the site; the server maps them and the screens call them.</summary>
/// <remarks>
/// JSON both ways follows <see cref="Core.Plans.PlanJson.Options"/>. A refusal has a 4xx status and an <see cref="ApiProblem"/> as its body.
/// Ids are whole numbers above zero and stay the same for as long as the row lives, also after delete and restore.
/// </remarks>
public static class ApiRoutes
{
    /// <summary>GET: every <see cref="OffcutRow"/> in order. POST an <see cref="OffcutEntry"/>: 201 with its <see cref="OffcutRow"/>, 409 when the label is taken.</summary>
    public const string Offcuts = "/api/offcuts";

    /// <summary>POST a <see cref="PasteRequest"/>: 200 with a <see cref="PasteResult"/>.</summary>
    public const string OffcutsPaste = "/api/offcuts/paste";

    /// <summary>PUT an <see cref="OffcutEntry"/>: 200 with its <see cref="OffcutRow"/>. DELETE: 204; the row can be restored.</summary>
    /// <param name="id">The row.</param>
    public static string Offcut(long id) => $"{Offcuts}/{id}";

    /// <summary>POST without a body: 200 with the <see cref="OffcutRow"/> at its old place, 409 when its label has been taken meanwhile.</summary>
    /// <param name="id">The deleted row.</param>
    public static string OffcutRestore(long id) => $"{Offcuts}/{id}/restore";

    /// <summary>GET: every <see cref="GiftRow"/> in order. POST a <see cref="Core.Gifts.Gift"/>: 201 with its <see cref="GiftRow"/>, 409 when the label is taken.</summary>
    public const string Gifts = "/api/gifts";

    /// <summary>PUT a <see cref="Core.Gifts.Gift"/>: 200 with its <see cref="GiftRow"/>. DELETE: 204; the row can be restored.</summary>
    /// <param name="id">The row.</param>
    public static string Gift(long id) => $"{Gifts}/{id}";

    /// <summary>POST without a body: 200 with the <see cref="GiftRow"/> at its old place, 409 when its label has been taken meanwhile.</summary>
    /// <param name="id">The deleted row.</param>
    public static string GiftRestore(long id) => $"{Gifts}/{id}/restore";

    /// <summary>GET: the <see cref="YearsView"/>: occasions, what was given, and today.</summary>
    public const string Years = "/api/years";

    /// <summary>POST a <see cref="Core.Gifts.Occasion"/>: 201 with its <see cref="OccasionRow"/>, 409 when the name is taken.</summary>
    public const string Occasions = "/api/occasions";

    /// <summary>PUT a <see cref="Core.Gifts.Occasion"/>: 200 with its <see cref="OccasionRow"/>; under a new name its gifts go with it. DELETE: 204; the row can be restored. 409 while gifts are for it.</summary>
    /// <param name="id">The row.</param>
    public static string Occasion(long id) => $"{Occasions}/{id}";

    /// <summary>POST without a body: 200 with the <see cref="OccasionRow"/>, 409 when its name has been taken meanwhile.</summary>
    /// <param name="id">The removed row.</param>
    public static string OccasionRestore(long id) => $"{Occasions}/{id}/restore";

    /// <summary>POST <see cref="GiveGifts"/>: 200 with <see cref="GiftsGiven"/>; its gifts are off the list and the occasion is on its next date. 409 with what does not fit, and nothing is changed.</summary>
    /// <param name="id">The occasion.</param>
    public static string OccasionGiven(long id) => $"{Occasions}/{id}/given";

    /// <summary>POST the <see cref="GiftsGiven"/> that came of it: 204, and all is as before. 409 when a label is in use again, and nothing is changed.</summary>
    /// <param name="id">The occasion.</param>
    public static string OccasionTakeBack(long id) => $"{Occasions}/{id}/take-back";

    /// <summary>POST a <see cref="Core.Gifts.GivenGift"/>: 201 with its <see cref="GivenRow"/>.</summary>
    public const string Given = "/api/given";

    /// <summary>PUT a <see cref="Core.Gifts.GivenGift"/>: 200 with its <see cref="GivenRow"/>. DELETE: 204; the row can be restored.</summary>
    /// <param name="id">The row.</param>
    public static string GivenGift(long id) => $"{Given}/{id}";

    /// <summary>POST without a body: 200 with the <see cref="GivenRow"/>.</summary>
    /// <param name="id">The removed row.</param>
    public static string GivenRestore(long id) => $"{Given}/{id}/restore";

    /// <summary>GET: the <see cref="Core.Shops.Shop"/>. PUT one: 200 with the shop as kept.</summary>
    public const string Shop = "/api/shop";

    /// <summary>GET: the <see cref="Core.Shops.WorkHours"/>. PUT them: 200 with the hours as kept.</summary>
    public const string Hours = "/api/hours";

    /// <summary>GET: every <see cref="TimeRow"/> in the order kept. POST a <see cref="Core.Shops.TimeReading"/>: 201 with its <see cref="TimeRow"/>.</summary>
    public const string Times = "/api/times";

    /// <summary>GET: every <see cref="Core.Shops.Price"/> in order. PUT all of them: 200 with them as kept.</summary>
    public const string Prices = "/api/prices";

    /// <summary>GET: the maker's own <see cref="Core.Shops.Jig"/>s. PUT all of them: 200 with them as kept.</summary>
    public const string Jigs = "/api/jigs";

    /// <summary>GET: the <see cref="Core.Calendar.Worth.WorthAnswer"/> for the latest plan, what is done left out. 404 when there is no plan.</summary>
    public const string Worth = "/api/worth";

    /// <summary>DELETE: 204; the reading is gone.</summary>
    /// <param name="id">The row.</param>
    public static string Time(long id) => $"{Times}/{id}";

    /// <summary>
    /// GET: the <see cref="CalendarView"/> of the latest calendar. POST a <see cref="MakeCalendar"/>: 200 with the <see cref="CalendarView"/> of the new one, or with the reasons why there is none;
    /// 404 when there is no plan, 409 while another is being made. It takes as long as the question says.
    /// </summary>
    public const string Calendar = "/api/calendar";

    /// <summary>PUT <see cref="Core.Calendar.CalendarMarks"/>: 200 with the <see cref="CalendarView"/>; 400 for a task that the calendar has not, or a pin that does not fit.</summary>
    public const string CalendarMarks = "/api/calendar/marks";

    /// <summary>POST <see cref="MoveTasks"/>: 200 with the <see cref="CalendarView"/> in which they stand there, pinned; 400 with what does not fit, 404 when there is no calendar.</summary>
    public const string CalendarMoves = "/api/calendar/moves";

    /// <summary>GET: the latest calendar for the calendar on a phone, with the evenings of those before cancelled where nothing is done any more. 404 when there is none.</summary>
    public const string CalendarFile = "/api/calendar/calendar.ics";

    /// <summary>GET: the <see cref="Core.Calendar.CalendarChance"/> of the latest calendar. 404 when there is none.</summary>
    public const string CalendarChance = "/api/calendar/chance";

    /// <summary>
    /// POST a <see cref="CalendarQuestion"/>: 200 with the <see cref="Core.Calendar.CalendarWhy"/> about the latest calendar; 404 when there is none, 409 when the plan it was made of is not the latest any more.
    /// It takes as long as the question says.
    /// </summary>
    public const string CalendarWhy = "/api/calendar/why";

    /// <summary>POST without a body: 204; every question about the calendar that is being answered is answered at once with what is known.</summary>
    public const string CalendarWhyEnd = "/api/calendar/why/end";

    /// <summary>GET: the <see cref="ZoneName"/> of the machine the server runs on, which is the shop's unless its hours name another.</summary>
    public const string HomeZone = "/api/hours/home-zone";

    /// <summary>GET: every <see cref="Core.Designs.Design"/> a gift can name, built-in ones first.</summary>
    public const string Designs = "/api/designs";

    /// <summary>PUT a <see cref="Core.Designs.Design"/> of that key: 200. DELETE: 204. Built-in designs are refused with 409.</summary>
    /// <param name="key">Key of the design.</param>
    public static string Design(string key) => $"{Designs}/{Uri.EscapeDataString(key)}";

    /// <summary>GET: the <see cref="WorkshopSummary"/>. DELETE: 204; pile, gifts, occasions, what was given, shop, hours, times, prices, jigs, designs, plan and calendar are gone for good.</summary>
    public const string Workshop = "/api/workshop";

    /// <summary>PUT a <see cref="WorkshopName"/>: 200 with the <see cref="WorkshopSummary"/>.</summary>
    public const string WorkshopName = "/api/workshop/name";

    /// <summary>POST without a body: 200 with the <see cref="WorkshopSummary"/> of the example workshop; 409 when there are offcuts or gifts already, unless the query has <c>replace=true</c>.</summary>
    public const string Example = "/api/example";

    /// <summary>
    /// POST files as multipart/form-data, field <c>files</c>: <c>pile.csv</c>, <c>gifts.csv</c>, <c>occasions.csv</c>, <c>given.csv</c>, <c>shop.json</c>, <c>hours.json</c>, <c>times.csv</c>, <c>prices.csv</c>, <c>jigs.csv</c>, <c>choices.json</c>, <c>designs/*.json</c>, or a zip of them.
    /// 200 with an <see cref="ImportResult"/>. Each file replaces what the workshop has of its kind; all or nothing.
    /// </summary>
    public const string Import = "/api/import";

    /// <summary>GET: the workshop folder as a zip that <see cref="Import"/> and the command line read.</summary>
    public const string Export = "/api/export";

    /// <summary>POST a <see cref="RunRequest"/>: 202 with the <see cref="RunStatus"/>, 409 when a run is going on.</summary>
    public const string Runs = "/api/plan/runs";

    /// <summary>GET: the <see cref="RunStatus"/> of the run going on, else of the last one.</summary>
    public const string CurrentRun = "/api/plan/runs/current";

    /// <summary>GET: server-sent events; each event named <see cref="StatusEvent"/> carries a <see cref="RunStatus"/>, the first at once. The stream stays open between runs; reconnect when it breaks.</summary>
    public const string CurrentRunEvents = "/api/plan/runs/current/events";

    /// <summary>POST without a body: 202 with the <see cref="RunStatus"/>; the best plan so far is kept.</summary>
    public const string CurrentRunCancel = "/api/plan/runs/current/cancel";

    /// <summary>GET: the latest <see cref="Core.Plans.Plan"/>, 204 when there is none. The header <see cref="StaleHeader"/> tells whether the workshop has changed since.</summary>
    public const string Plan = "/api/plan";

    /// <summary>POST a <see cref="StripsInOrder"/>: 204; the order is kept as a choice and the latest plan has it. 400 with what the audit says when strips may not lie so, 409 when the plan has changed.</summary>
    public const string PlanOrder = "/api/plan/order";

    /// <summary>POST a <see cref="Core.Plans.Why.WhyQuestion"/>: 200 with the <see cref="Core.Plans.Why.WhyAnswer"/> about the latest plan, 400 when the plan has no such gift, part or offcut, 404 when there is no plan.</summary>
    public const string PlanWhy = "/api/plan/why";

    /// <summary>
    /// POST a <see cref="Core.Plans.Ideas.IdeasQuestion"/>: 200 with the <see cref="Core.Plans.Ideas.IdeasAnswer"/> about the workshop as it is, 400 when it has no such offcut or an empty pile.
    /// It takes as long as the question says.
    /// </summary>
    public const string Ideas = "/api/ideas";

    /// <summary>POST without a body: 204; every question for ideas that is being answered is answered at once with what is known.</summary>
    public const string IdeasEnd = "/api/ideas/end";

    /// <summary>GET: the <see cref="Core.Plans.Choices.MakerChoices"/>. PUT them: 200 with them as kept; the latest plan stays up to date when it keeps to them.</summary>
    public const string Choices = "/api/choices";

    /// <summary>GET: the bench sheets as PDF; query <c>paper=letter</c> or <c>paper=a4</c>. 404 when there is no plan.</summary>
    public const string PlanSheets = "/api/plan/sheets.pdf";

    /// <summary>GET: the strip labels as PDF; query <c>paper=letter</c> or <c>paper=a4</c>. 404 when there is no plan.</summary>
    public const string PlanLabels = "/api/plan/labels.pdf";

    /// <summary>Response header of <see cref="Plan"/>: <c>true</c> when the plan was made from other facts than the workshop now holds, else <c>false</c>.</summary>
    public const string StaleHeader = "Scrapwright-Plan-Stale";

    /// <summary>Name of the events of <see cref="CurrentRunEvents"/>.</summary>
    public const string StatusEvent = "status";
}
