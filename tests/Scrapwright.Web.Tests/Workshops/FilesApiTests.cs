using System.Collections.Immutable;
using System.IO.Compression;
using System.Net;
using System.Text;
using Scrapwright.Client.Api;
using Scrapwright.Core.Plans;
using Scrapwright.Files;

namespace Scrapwright.Web.Tests.Workshops;

public sealed class FilesApiTests
{
    [Fact]
    public async Task The_example_is_loaded_with_one_request_and_never_over_a_makers_own_pile_unasked()
    {
        await using var app = await RunningApp.StartAsync();

        var summary = await RunningApp.ReadAsync<WorkshopSummary>(await app.Http.PostAsync(ApiRoutes.Example, null));
        await RunningApp.ReadProblemAsync(await app.Http.PostAsync(ApiRoutes.Example, null), 409);
        Assert.Equal(HttpStatusCode.OK, (await app.Http.PostAsync(ApiRoutes.Example + "?replace=true", null)).StatusCode);

        Assert.Equal(new WorkshopSummary(ExampleWorkshop.Name, ExampleWorkshop.Request.Pile.Length, ExampleWorkshop.Request.Pile.Sum(o => o.Count), ExampleWorkshop.Request.Gifts.Length, false, false), summary);
        Assert.Equal(ExampleWorkshop.Request.Gifts.Select(g => g.Label), (await app.GetAsync<ImmutableArray<GiftRow>>(ApiRoutes.Gifts)).Select(r => r.Gift.Label));
    }

    [Fact]
    public async Task What_is_exported_is_imported_again_as_the_same_workshop()
    {
        await using var from = await RunningApp.StartAsync();
        await using var to = await RunningApp.StartAsync();
        await from.Http.PostAsync(ApiRoutes.Example, null);
        await from.PutAsync(ApiRoutes.Prices, ImmutableArray.Create(new Core.Shops.Price(Core.Shops.PriceKind.Item, "drill bit", 6.50m, 2)));
        await from.PostAsync(ApiRoutes.Times, new Core.Shops.TimeReading(new(2027, 5, 4), Core.Shops.Operation.Sand, 10, 20) { Note = "new paper" });

        var zip = await from.Http.GetByteArrayAsync(ApiRoutes.Export);
        var result = await RunningApp.ReadAsync<ImportResult>(await ImportAsync(to, ("workshop.zip", zip)));

        Assert.Equal((ExampleWorkshop.Request.Pile.Length, ExampleWorkshop.Request.Gifts.Length, true, true), (result.Offcuts, result.Gifts, result.Shop, result.Hours));
        Assert.Equal(await to.Http.GetStringAsync(ApiRoutes.Hours), await from.Http.GetStringAsync(ApiRoutes.Hours));
        Assert.Equal((1, 1), (result.Times, result.Prices));
        Assert.Equal(await from.Http.GetStringAsync(ApiRoutes.Prices), await to.Http.GetStringAsync(ApiRoutes.Prices));
        Assert.Equal(await from.Http.GetStringAsync(ApiRoutes.Times), await to.Http.GetStringAsync(ApiRoutes.Times));
        Assert.Equal(ExampleWorkshop.Hours.Exceptions.Length, (await to.GetAsync<Core.Shops.WorkHours>(ApiRoutes.Hours)).Exceptions.Length);
        Assert.Equal(await PileAsync(from), await PileAsync(to));
        Assert.Equal(await to.Http.GetStringAsync(ApiRoutes.Shop), await from.Http.GetStringAsync(ApiRoutes.Shop));
    }

    [Fact]
    public async Task A_file_with_one_wrong_row_changes_nothing_and_is_told_by_line()
    {
        await using var app = await RunningApp.StartAsync();
        await app.Http.PostAsync(ApiRoutes.Example, null);
        var before = await PileAsync(app);

        var response = await ImportAsync(app, ("pile.csv", Encoding.UTF8.GetBytes("label,species,length,width,thickness\nA1,walnut,12,2,3/4\nA2,walnut,-12,2,3/4\n")));

        var problem = await RunningApp.ReadProblemAsync(response, 400);
        Assert.StartsWith("pile.csv line 3", problem.Problems[0].Field, StringComparison.Ordinal);
        Assert.Equal(before, await PileAsync(app));
    }

    [Fact]
    public async Task One_file_replaces_only_its_own_kind()
    {
        await using var app = await RunningApp.StartAsync();
        await app.Http.PostAsync(ApiRoutes.Example, null);

        var response = await ImportAsync(app, ("pile.csv", Encoding.UTF8.GetBytes("\uFEFFlabel;species;length;width;thickness\r\nA1;walnut;365 mm;54 mm;22 mm\r\n")));

        Assert.Equal(new ImportResult(1, null, false, null), (await RunningApp.ReadAsync<ImportResult>(response)) with { Doubts = new ImportResult(1, null, false, null).Doubts });
        Assert.Single(await app.GetAsync<ImmutableArray<OffcutRow>>(ApiRoutes.Offcuts));
        Assert.NotEmpty((await app.GetAsync<Core.Shops.WorkHours>(ApiRoutes.Hours)).Exceptions);
        Assert.Equal(ExampleWorkshop.Request.Gifts.Length, (await app.GetAsync<ImmutableArray<GiftRow>>(ApiRoutes.Gifts)).Length);
    }

    [Fact]
    public async Task A_shop_without_the_climate_that_a_kept_gift_lives_in_is_refused()
    {
        await using var app = await RunningApp.StartAsync();
        var months = string.Join(",", Enumerable.Repeat("{\"temperatureCelsius\":15,\"relativeHumidityPercent\":65}", 12));
        var shop = $"{{\"ownClimates\":[{{\"name\":\"Cellar\",\"months\":[{months}]}}]}}";
        var gifts = "gift,design,climate\na,rod-stand,Cellar\n";

        Assert.Equal(HttpStatusCode.OK, (await ImportAsync(app, ("shop.json", Encoding.UTF8.GetBytes(shop)), ("gifts.csv", Encoding.UTF8.GetBytes(gifts)))).StatusCode);
        var problem = await RunningApp.ReadProblemAsync(await ImportAsync(app, ("shop.json", "{}"u8.ToArray())), 400);

        Assert.Equal(new FieldProblem("shop.json ownClimates", "no “Cellar”", "the climate where gift a will live"), Assert.Single(problem.Problems));
        Assert.Equal(HttpStatusCode.OK, (await ImportAsync(app, ("gifts.csv", Encoding.UTF8.GetBytes(gifts)))).StatusCode);
    }

    [Theory]
    [InlineData("workshop.zip")]
    [InlineData("pile.csv")]
    [InlineData("shop.json")]
    [InlineData("holiday.jpg")]
    public async Task Garbage_is_refused_and_changes_nothing(string name)
    {
        await using var app = await RunningApp.StartAsync();
        await app.Http.PostAsync(ApiRoutes.Example, null);
        var before = await PileAsync(app);
        var garbage = new byte[10_000_000];
        new Random(3).NextBytes(garbage);

        Assert.NotEmpty((await RunningApp.ReadProblemAsync(await ImportAsync(app, (name, garbage)), 400)).Problems);

        Assert.Equal(before, await PileAsync(app));
    }

    [Fact]
    public async Task A_small_zip_that_unpacks_to_a_huge_file_is_refused()
    {
        await using var app = await RunningApp.StartAsync();
        var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create, leaveOpen: true))
        {
            using var entry = zip.CreateEntry("pile.csv").Open();
            for (var i = 0; i < 60; i++) entry.Write(new byte[1_000_000]);
        }

        Assert.NotEmpty((await RunningApp.ReadProblemAsync(await ImportAsync(app, ("w.zip", stream.ToArray())), 400)).Problems);
    }

    [Fact]
    public async Task Thirty_megabytes_are_too_much()
    {
        await using var app = await RunningApp.StartAsync();

        await RunningApp.ReadProblemAsync(await ImportAsync(app, ("pile.csv", new byte[30_000_000])), 413);
    }

    private static async Task<HttpResponseMessage> ImportAsync(RunningApp app, params (string Name, byte[] Bytes)[] files)
    {
        using var form = new MultipartFormDataContent();
        foreach (var (name, bytes) in files) form.Add(new ByteArrayContent(bytes), "files", name);
        return await app.Http.PostAsync(ApiRoutes.Import, form);
    }

    private static async Task<string> PileAsync(RunningApp app) =>
        PlanJson.Fingerprint(new PlanRequest { Pile = [.. (await app.GetAsync<ImmutableArray<OffcutRow>>(ApiRoutes.Offcuts)).Select(r => r.Offcut)] });
}
