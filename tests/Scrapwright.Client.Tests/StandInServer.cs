using System.Collections.Immutable;
using System.Net;
using System.Text;
using System.Text.Json;
using Scrapwright.Client.Api;
using Scrapwright.Core.Calendar;
using Scrapwright.Core.Calendar.Worth;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Core.Plans;
using Scrapwright.Core.Plans.Choices;
using Scrapwright.Core.Plans.Ideas;
using Scrapwright.Core.Plans.Why;
using Scrapwright.Core.Shops;

namespace Scrapwright.Client.Tests;

/// <summary>The far end of the wire: keeps offcuts, gifts and shop in memory and answers as the API's contract says. Can be cut off.</summary>
internal sealed class StandInServer : HttpMessageHandler
{
    private readonly Dictionary<long, GiftRow> deletedGifts = [];
    private GivenRow? removedGiven;
    private long lastId;

    public bool IsCutOff { get; set; }

    public List<OffcutRow> Offcuts { get; } = [];

    public List<GiftRow> Gifts { get; } = [];

    public List<OccasionRow> Occasions { get; } = [];

    public List<GivenRow> Given { get; } = [];

    public DateOnly Today { get; set; } = new(2027, 6, 20);

    /// <summary>Gifts that were said to be given, and what was taken back.</summary>
    public List<GiveGifts> Gave { get; } = [];

    public List<GiftsGiven> TakenBack { get; } = [];

    public Shop Shop { get; set; } = new();

    public List<string> Requests { get; } = [];

    public WorkHours Hours { get; set; } = new();

    /// <summary>Readings of time.</summary>
    public List<TimeRow> Times { get; } = [];

    /// <summary>Prices, the maker's own jigs, and the answer about them.</summary>
    public ImmutableArray<Price> Prices { get; set; } = [];

    public ImmutableArray<Jig> Jigs { get; set; } = [];

    public WorthAnswer? Worth { get; set; }

    /// <summary>What is wrong with any hours; null when nothing is.</summary>
    public ApiProblem? HoursProblem { get; set; }

    /// <summary>The calendar and how it stands, and what comes of making one.</summary>
    public CalendarView? Calendar { get; set; }

    public CalendarView? Next { get; set; }

    /// <summary>How likely the calendar holds, and what any question about it is answered with; null for none.</summary>
    public CalendarChance? Chance { get; set; }

    public CalendarWhy? CalendarWhy { get; set; }

    /// <summary>What a calendar was last asked for with.</summary>
    public MakeCalendar? Made { get; private set; }

    /// <summary>Tasks that were moved and kept.</summary>
    public List<MoveTasks> Moves { get; } = [];

    public MakerChoices Choices { get; set; } = new();

    /// <summary>Whether the plan was made from other facts than the workshop now holds.</summary>
    public bool PlanIsStale { get; set; }

    /// <summary>Orders of strips that were sent.</summary>
    public List<StripsInOrder> Orders { get; } = [];

    /// <summary>What any question about a plan is answered with.</summary>
    public WhyAnswer? Answer { get; set; }

    /// <summary>What any question for ideas is answered with, and the latest one that was asked.</summary>
    public IdeasAnswer? Ideas { get; set; }

    public IdeasQuestion? Asked { get; private set; }

    /// <summary>Holds the answer to a question for ideas back; null for answering at once.</summary>
    public TaskCompletionSource? Wait { get; set; }

    protected override async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
    {
        var path = request.RequestUri!.AbsolutePath;
        Requests.Add($"{request.Method} {path}");
        if (IsCutOff)
        {
            throw new HttpRequestException("No way through.");
        }

        var body = request.Content is null ? "" : await request.Content.ReadAsStringAsync(cancellationToken);
        return (request.Method.Method, path) switch
        {
            ("GET", ApiRoutes.Offcuts) => Json(Offcuts.ToImmutableArray()),
            ("GET", ApiRoutes.Gifts) => Json(Gifts.ToImmutableArray()),
            ("GET", ApiRoutes.Shop) => Json(Shop),
            ("GET", ApiRoutes.Designs) => Json(DesignCatalogue.BuiltIn),
            ("GET", ApiRoutes.Workshop) => Json(new WorkshopSummary("", Offcuts.Count, Offcuts.Sum(o => o.Offcut.Count), Gifts.Count, PlanIsStale, PlanIsStale)),
            ("POST", ApiRoutes.Offcuts) => AddOffcut(Read<OffcutEntry>(body)),
            ("POST", ApiRoutes.Gifts) => AddGift(Read<Gift>(body)),
            ("PUT", _) when path.StartsWith(ApiRoutes.Gifts, StringComparison.Ordinal) => ChangeGift(new(Id(path), Read<Gift>(body))),
            ("PUT", ApiRoutes.Shop) => Json(Shop = Read<Shop>(body)),
            ("GET", ApiRoutes.Choices) => Json(Choices),
            ("PUT", ApiRoutes.Choices) => Json(Choices = Read<MakerChoices>(body)),
            ("GET", ApiRoutes.Hours) => Json(Hours),
            ("PUT", ApiRoutes.Hours) => PutHours(Read<WorkHours>(body)),
            ("GET", ApiRoutes.Times) => Json(Times.ToImmutableArray()),
            ("POST", ApiRoutes.Times) => AddTime(Read<TimeReading>(body)),
            ("DELETE", _) when path.StartsWith(ApiRoutes.Times, StringComparison.Ordinal) => DeleteTime(Id(path)),
            ("GET", ApiRoutes.Prices) => Json(Prices),
            ("PUT", ApiRoutes.Prices) => Json(Prices = Read<ImmutableArray<Price>>(body)),
            ("GET", ApiRoutes.Jigs) => Json(Jigs),
            ("PUT", ApiRoutes.Jigs) => Json(Jigs = Read<ImmutableArray<Jig>>(body)),
            ("GET", ApiRoutes.Worth) => Json(Worth),
            ("GET", ApiRoutes.HomeZone) => Json(new ZoneName("Europe/Dublin")),
            ("GET", ApiRoutes.Calendar) => Json(Calendar),
            ("POST", ApiRoutes.Calendar) => Make(Read<MakeCalendar>(body)),
            ("GET", ApiRoutes.CalendarChance) when Chance is not null => Json(Chance),
            ("POST", ApiRoutes.CalendarWhy) when CalendarWhy is not null => Json(CalendarWhy),
            ("PUT", ApiRoutes.CalendarMarks) => Json(Calendar = Calendar! with { Marks = Read<CalendarMarks>(body) }),
            ("POST", ApiRoutes.CalendarMoves) => Move(Read<MoveTasks>(body)),
            ("POST", ApiRoutes.PlanOrder) => KeepOrder(Read<StripsInOrder>(body)),
            ("POST", ApiRoutes.PlanWhy) => Json(Answer),
            ("POST", ApiRoutes.Ideas) => await AnswerAsync(Read<IdeasQuestion>(body)),
            ("POST", ApiRoutes.IdeasEnd) => new HttpResponseMessage(HttpStatusCode.NoContent),
            ("DELETE", _) when path.StartsWith(ApiRoutes.Gifts, StringComparison.Ordinal) => DeleteGift(Id(path)),
            ("POST", _) when path.StartsWith(ApiRoutes.Gifts, StringComparison.Ordinal) && path.EndsWith("/restore", StringComparison.Ordinal) => RestoreGift(Id(path)),
            ("GET", ApiRoutes.Years) => Json(new YearsView([.. Occasions], [.. Given], Today)),
            ("POST", ApiRoutes.Occasions) => AddOccasion(Read<Occasion>(body)),
            ("PUT", _) when path.StartsWith(ApiRoutes.Occasions, StringComparison.Ordinal) => Json(Occasions[Occasions.FindIndex(o => o.Id == Id(path))] = new(Id(path), Read<Occasion>(body))),
            ("POST", _) when path.EndsWith("/take-back", StringComparison.Ordinal) => TakeBack(Read<GiftsGiven>(body)),
            ("POST", _) when path.StartsWith(ApiRoutes.Occasions, StringComparison.Ordinal) && path.EndsWith("/given", StringComparison.Ordinal) => Give(Read<GiveGifts>(body)),
            ("POST", ApiRoutes.Given) => AddGiven(Read<GivenGift>(body)),
            ("PUT", _) when path.StartsWith(ApiRoutes.Given, StringComparison.Ordinal) => Json(Given[Given.FindIndex(g => g.Id == Id(path))] = new(Id(path), Read<GivenGift>(body))),
            ("DELETE", _) when path.StartsWith(ApiRoutes.Given, StringComparison.Ordinal) => RemoveGiven(Id(path)),
            ("POST", _) when path.StartsWith(ApiRoutes.Given, StringComparison.Ordinal) && path.EndsWith("/restore", StringComparison.Ordinal) => AddGiven(removedGiven!.Given),
            _ => new HttpResponseMessage(HttpStatusCode.NotFound),
        };
    }

    private static long Id(string path) => long.Parse(path.Split('/')[3]);

    private static T Read<T>(string body) => JsonSerializer.Deserialize<T>(body, PlanJson.Options)!;

    private static HttpResponseMessage Json<T>(T value, HttpStatusCode status = HttpStatusCode.OK) =>
        new(status) { Content = new StringContent(JsonSerializer.Serialize(value, PlanJson.Options), Encoding.UTF8, "application/json") };

    private HttpResponseMessage KeepOrder(StripsInOrder order)
    {
        Orders.Add(order);
        return new HttpResponseMessage(HttpStatusCode.NoContent);
    }

    private HttpResponseMessage AddTime(TimeReading reading)
    {
        Times.Add(new(++lastId, reading));
        return Json(Times[^1], HttpStatusCode.Created);
    }

    private HttpResponseMessage DeleteTime(long id) => new(Times.RemoveAll(t => t.Id == id) == 1 ? HttpStatusCode.NoContent : HttpStatusCode.NotFound);

    private HttpResponseMessage PutHours(WorkHours hours) => HoursProblem is { } problem ? Json(problem, HttpStatusCode.BadRequest) : Json(Hours = hours);

    private HttpResponseMessage Make(MakeCalendar asked)
    {
        Made = asked;
        return Json(Calendar = Next ?? Calendar);
    }

    private HttpResponseMessage Move(MoveTasks move)
    {
        Moves.Add(move);
        Calendar = Calendar! with { Marks = Calendar.Marks.WithPinned(move.Tasks.Select(t => new PinnedTask(t, move.Start))) };
        return Json(Calendar);
    }

    private HttpResponseMessage AddOccasion(Occasion occasion)
    {
        var row = new OccasionRow(++lastId, occasion);
        Occasions.Add(row);
        return Json(row, HttpStatusCode.Created);
    }

    private HttpResponseMessage Give(GiveGifts asked)
    {
        Gave.Add(asked);
        return Json(new GiftsGiven([1], [2], new DateOnly(2027, 6, 19)));
    }

    private HttpResponseMessage TakeBack(GiftsGiven done)
    {
        TakenBack.Add(done);
        return new HttpResponseMessage(HttpStatusCode.NoContent);
    }

    private HttpResponseMessage AddGiven(GivenGift given)
    {
        var row = new GivenRow(++lastId, given);
        Given.Add(row);
        return Json(row, HttpStatusCode.Created);
    }

    private HttpResponseMessage RemoveGiven(long id)
    {
        removedGiven = Given.Single(g => g.Id == id);
        Given.RemoveAll(g => g.Id == id);
        return new HttpResponseMessage(HttpStatusCode.NoContent);
    }

    private HttpResponseMessage AddOffcut(OffcutEntry entry)
    {
        var row = new OffcutRow(++lastId, entry.Offcut.Label.Length > 0 ? entry.Offcut : entry.Offcut with { Label = $"X{lastId}" }, entry.Unit);
        Offcuts.Add(row);
        return Json(row, HttpStatusCode.Created);
    }

    private async Task<HttpResponseMessage> AnswerAsync(IdeasQuestion question)
    {
        Asked = question;
        await (Wait?.Task ?? Task.CompletedTask);
        return Json(Ideas);
    }

    private HttpResponseMessage AddGift(Gift gift)
    {
        var row = new GiftRow(++lastId, gift);
        Gifts.Add(row);
        return Json(row, HttpStatusCode.Created);
    }

    private HttpResponseMessage ChangeGift(GiftRow row)
    {
        Gifts[Gifts.FindIndex(g => g.Id == row.Id)] = row;
        return Json(row);
    }

    private HttpResponseMessage DeleteGift(long id)
    {
        deletedGifts[id] = Gifts.Single(g => g.Id == id);
        Gifts.RemoveAll(g => g.Id == id);
        return new HttpResponseMessage(HttpStatusCode.NoContent);
    }

    private HttpResponseMessage RestoreGift(long id)
    {
        deletedGifts.Remove(id, out var row);
        Gifts.Add(row!);
        return Json(row);
    }
}
