using System.Collections.Immutable;
using System.Net;
using System.Text;
using Scrapwright.Client.Api;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;
using Scrapwright.Files;

namespace Scrapwright.Web.Tests.Years;

public sealed class YearsApiTests
{
    private static readonly string AnyDesign = DesignCatalogue.BuiltIn[0].Key;

    private static DateOnly Today => DateOnly.FromDateTime(DateTime.Now);

    private static Occasion Fair(int days = -1) => new() { Name = "Fair", Date = Today.AddDays(days), Repeats = new Repetition.FromEaster(10) };

    private static Gift Gift(string label, string occasion = "Fair") => new() { Label = label, Design = AnyDesign, Recipient = "neighbour", Occasion = occasion };

    private static async Task<OccasionRow> AddAsync(RunningApp app, Occasion occasion) => await RunningApp.ReadAsync<OccasionRow>(await app.PostAsync(ApiRoutes.Occasions, occasion));

    private static Task<YearsView> YearsAsync(RunningApp app) => app.GetAsync<YearsView>(ApiRoutes.Years);

    [Fact]
    public async Task An_occasion_is_added_changed_removed_and_restored()
    {
        await using var app = await RunningApp.StartAsync();

        var row = await AddAsync(app, Fair());
        await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.Occasions, Fair() with { Name = "FAIR" }), 409);
        await app.PutAsync(ApiRoutes.Occasion(row.Id), Fair() with { Name = "Village fair" });
        Assert.Equal(HttpStatusCode.NoContent, (await app.Http.DeleteAsync(ApiRoutes.Occasion(row.Id))).StatusCode);
        Assert.Empty((await YearsAsync(app)).Occasions);
        await app.Http.PostAsync(ApiRoutes.OccasionRestore(row.Id), null);

        var years = await YearsAsync(app);
        Assert.Equal((row.Id, "Village fair", new Repetition.FromEaster(10)), (years.Occasions[0].Id, years.Occasions[0].Occasion.Name, years.Occasions[0].Occasion.Repeats));
        Assert.Equal(Today, years.Today);
    }

    [Fact]
    public async Task What_was_given_is_added_corrected_removed_and_restored()
    {
        await using var app = await RunningApp.StartAsync();
        var given = new GivenGift { Date = new(2025, 6, 21), Recipient = "neighbour", Design = "old-box" };

        var response = await app.PostAsync(ApiRoutes.Given, given);
        var row = await RunningApp.ReadAsync<GivenRow>(response);
        await app.PutAsync(ApiRoutes.GivenGift(row.Id), given with { Note = "liked it" });
        await app.Http.DeleteAsync(ApiRoutes.GivenGift(row.Id));
        Assert.Empty((await YearsAsync(app)).Given);
        await app.Http.PostAsync(ApiRoutes.GivenRestore(row.Id), null);

        Assert.Equal(HttpStatusCode.Created, response.StatusCode);
        Assert.Equal((row.Id, "liked it"), ((await YearsAsync(app)).Given[0].Id, (await YearsAsync(app)).Given[0].Given.Note));
        await RunningApp.ReadProblemAsync(await app.Http.DeleteAsync(ApiRoutes.GivenGift(99)), 404);
    }

    [Fact]
    public async Task Wrong_values_are_told_by_field()
    {
        await using var app = await RunningApp.StartAsync();

        var occasion = await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.Occasions, Fair() with { Name = " ", Date = new(1066, 10, 14) }), 400);
        var given = await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.Given, new GivenGift { Date = Today, Recipient = "", Design = "" }), 400);
        var gift = await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.Gifts, Gift("a", "no such day")), 400);
        var words = await RunningApp.ReadProblemAsync(await app.Http.PostAsync(ApiRoutes.Occasions, RunningApp.Text("{\"name\":\"x\",\"date\":\"2027-06-19\",\"repeats\":\"whenever\"}")), 400);

        Assert.Equal(["name", "date"], occasion.Problems.Select(p => p.Field));
        Assert.Equal(["recipient", "design"], given.Problems.Select(p => p.Field));
        Assert.Equal(["occasion"], gift.Problems.Select(p => p.Field));
        Assert.NotEmpty(words.Problems);
    }

    [Fact]
    public async Task Gifts_are_given_and_all_is_taken_back()
    {
        await using var app = await RunningApp.StartAsync();
        var row = await AddAsync(app, Fair());
        foreach (var gift in (Gift[])[Gift("a"), Gift("b"), Gift("c", "")]) await app.PostAsync(ApiRoutes.Gifts, gift);
        await RunningApp.ReadProblemAsync(await app.Http.DeleteAsync(ApiRoutes.Occasion(row.Id)), 409);

        var done = await RunningApp.ReadAsync<GiftsGiven>(await app.PostAsync(ApiRoutes.OccasionGiven(row.Id), new GiveGifts(null, ["b"])));

        Assert.Equal(["b", "c"], (await app.GetAsync<ImmutableArray<GiftRow>>(ApiRoutes.Gifts)).Select(g => g.Gift.Label));
        var years = await YearsAsync(app);
        Assert.Equal(("neighbour", Today.AddDays(-1)), (years.Given.Single().Given.Recipient, years.Given.Single().Given.Date));
        Assert.True(years.Occasions[0].Occasion.Date > Today);

        Assert.Equal(HttpStatusCode.NoContent, (await app.PostAsync(ApiRoutes.OccasionTakeBack(row.Id), done)).StatusCode);

        Assert.Equal(["a", "b", "c"], (await app.GetAsync<ImmutableArray<GiftRow>>(ApiRoutes.Gifts)).Select(g => g.Gift.Label));
        years = await YearsAsync(app);
        Assert.Equal((0, Today.AddDays(-1)), (years.Given.Length, years.Occasions[0].Occasion.Date));
    }

    [Fact]
    public async Task What_cannot_be_given_is_refused_with_what_was_found_and_expected()
    {
        await using var app = await RunningApp.StartAsync();
        var row = await AddAsync(app, Fair(days: 5));

        await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.OccasionGiven(99), new GiveGifts(null, [])), 404);
        var early = await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.OccasionGiven(row.Id), new GiveGifts(null, [])), 409);
        var none = await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.OccasionGiven(row.Id), new GiveGifts(Today, [])), 409);

        Assert.Equal(("on", "gifts"), (early.Problems[0].Field, none.Problems[0].Field));
    }

    [Fact]
    public async Task The_example_goes_out_and_comes_in_with_its_years()
    {
        await using var from = await RunningApp.StartAsync();
        await using var to = await RunningApp.StartAsync();
        await from.Http.PostAsync(ApiRoutes.Example, null);

        using var form = new MultipartFormDataContent();
        form.Add(new ByteArrayContent(await from.Http.GetByteArrayAsync(ApiRoutes.Export)), "files", "workshop.zip");
        var result = await RunningApp.ReadAsync<ImportResult>(await to.Http.PostAsync(ApiRoutes.Import, form));

        Assert.Equal((ExampleWorkshop.Years.Occasions.Length, ExampleWorkshop.Years.Given.Length), (result.Occasions, result.Given));
        var years = await YearsAsync(to);
        Assert.Equal(ExampleWorkshop.Years.Occasions, years.Occasions.Select(r => r.Occasion));
        Assert.Equal(GivenFile.Write(ExampleWorkshop.Years.Given), GivenFile.Write(years.Given.Select(r => r.Given)));
        Assert.All(await to.GetAsync<ImmutableArray<GiftRow>>(ApiRoutes.Gifts), row => Assert.Equal(("Midsummer open day", null), (row.Gift.Occasion, row.Gift.Due)));
    }

    [Fact]
    public async Task Files_may_not_take_an_occasion_from_its_gifts()
    {
        await using var app = await RunningApp.StartAsync();
        await AddAsync(app, Fair());
        await app.PostAsync(ApiRoutes.Gifts, Gift("a"));
        async Task<HttpResponseMessage> ImportAsync(params (string Name, string Text)[] files)
        {
            using var form = new MultipartFormDataContent();
            foreach (var (name, text) in files) form.Add(new ByteArrayContent(Encoding.UTF8.GetBytes(text)), "files", name);
            return await app.Http.PostAsync(ApiRoutes.Import, form);
        }

        var lost = await RunningApp.ReadProblemAsync(await ImportAsync(("occasions.csv", "occasion,date\nOther,2027-06-19\n")), 400);
        var unknown = await RunningApp.ReadProblemAsync(await ImportAsync(("gifts.csv", $"gift,design,occasion\na,{AnyDesign},Fiar\n")), 400);
        var both = await ImportAsync(("occasions.csv", "occasion,date\nOther,2027-06-19\n"), ("gifts.csv", $"gift,design,occasion\na,{AnyDesign},other\n"));

        Assert.Equal("occasions.csv occasion", lost.Problems.Single().Field);
        Assert.Contains("maybe Fair", unknown.Problems.Single().Expected, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, both.StatusCode);
    }
}
