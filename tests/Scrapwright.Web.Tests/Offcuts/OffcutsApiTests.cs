using System.Collections.Immutable;
using System.Net;
using Scrapwright.Client.Api;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Pile;

namespace Scrapwright.Web.Tests.Offcuts;

public sealed class OffcutsApiTests
{
    [Fact]
    public async Task An_offcut_is_added_changed_deleted_and_restored()
    {
        await using var app = await RunningApp.StartAsync();

        var added = await app.PostAsync(ApiRoutes.Offcuts, RunningApp.Entry("W1"));
        Assert.Equal(HttpStatusCode.Created, added.StatusCode);
        var row = await RunningApp.ReadAsync<OffcutRow>(added);
        var wider = RunningApp.Entry("W1");
        wider = wider with { Offcut = wider.Offcut with { Width = Length.FromInches(3) }, Unit = LengthUnit.Millimetre };
        Assert.Equal(HttpStatusCode.OK, (await app.PutAsync(ApiRoutes.Offcut(row.Id), wider)).StatusCode);
        Assert.Equal(HttpStatusCode.NoContent, (await app.Http.DeleteAsync(ApiRoutes.Offcut(row.Id))).StatusCode);
        Assert.Empty(await app.GetAsync<ImmutableArray<OffcutRow>>(ApiRoutes.Offcuts));
        Assert.Equal(HttpStatusCode.OK, (await app.Http.PostAsync(ApiRoutes.OffcutRestore(row.Id), null)).StatusCode);

        var kept = Assert.Single(await app.GetAsync<ImmutableArray<OffcutRow>>(ApiRoutes.Offcuts));
        Assert.Equal((row.Id, "W1", Length.FromInches(3), LengthUnit.Millimetre), (kept.Id, kept.Offcut.Label, kept.Offcut.Width, kept.Unit));
    }

    [Fact]
    public async Task Every_wrong_value_is_told_with_what_was_found_and_expected()
    {
        await using var app = await RunningApp.StartAsync();
        var entry = new OffcutEntry(
            new Offcut
            {
                Label = "no spaces!",
                Species = "black-walnt",
                Length = -Length.FromInches(3, 8),
                Width = Length.Zero,
                Thickness = Length.FromMillimetres(100_001),
                Count = 0,
                Cup = -Length.FromInches(1),
                Note = "bell \a",
                Defects = [new Defect(DefectKind.Knot, Length.FromInches(5), Length.FromInches(4))],
            },
            LengthUnit.Inch);

        var problem = await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.Offcuts, entry), 400);

        Assert.Equal(
            ["offcut.label", "offcut.species", "offcut.length", "offcut.width", "offcut.thickness", "offcut.count", "offcut.cup", "offcut.note", "offcut.defects[0]"],
            problem.Problems.Select(p => p.Field));
        Assert.Contains("black-walnut", problem.Problems[1].Expected, StringComparison.Ordinal);
        Assert.Equal("-3/8 in", problem.Problems[2].Found);
        Assert.Empty(await app.GetAsync<ImmutableArray<OffcutRow>>(ApiRoutes.Offcuts));
    }

    [Theory]
    [InlineData("")]
    [InlineData("null")]
    [InlineData("{}")]
    [InlineData("[1,2")]
    [InlineData("\"walnut\"")]
    [InlineData("""{"offcut":null,"unit":"inch"}""")]
    [InlineData("""{"offcut":{"label":null,"species":"black-walnut","length":{"pm":1},"width":{"pm":1},"thickness":{"pm":1}},"unit":"inch"}""")]
    [InlineData("""{"offcut":{"label":"a","species":"black-walnut","length":{"pm":1},"width":{"pm":1},"thickness":{"pm":1},"defects":[null]},"unit":"inch"}""")]
    [InlineData("""{"offcut":{"label":"a","species":"black-walnut","length":{"pm":1},"width":{"pm":1},"thickness":{"pm":1},"defects":null},"unit":"inch"}""")]
    [InlineData("""{"offcut":{"label":"a","species":"black-walnut","length":{"pm":1},"width":{"pm":1},"thickness":{"pm":1}},"unit":"cubit"}""")]
    [InlineData("""{"offcut":{"label":"a","species":"black-walnut","length":{"pm":99999999999999999999},"width":{"pm":1},"thickness":{"pm":1}},"unit":"inch"}""")]
    [InlineData("""{"offcut":{"label":"a","species":"black-walnut","length":{"pm":1},"width":{"pm":1},"thickness":{"pm":1},"colour":"red"},"unit":"inch"}""")]
    [InlineData("\0\0\0\0")]
    public async Task A_body_that_is_no_offcut_is_refused_and_nothing_is_added(string body)
    {
        await using var app = await RunningApp.StartAsync();

        var response = await app.Http.PostAsync(ApiRoutes.Offcuts, RunningApp.Text(body));

        Assert.NotEmpty((await RunningApp.ReadProblemAsync(response, 400)).Problems);
        Assert.Empty(await app.GetAsync<ImmutableArray<OffcutRow>>(ApiRoutes.Offcuts));
    }

    [Fact]
    public async Task A_body_that_is_no_JSON_by_its_type_is_refused()
    {
        await using var app = await RunningApp.StartAsync();

        await RunningApp.ReadProblemAsync(await app.Http.PostAsync(ApiRoutes.Offcuts, new StringContent("label=W1")), 415);
    }

    [Fact]
    public async Task A_taken_label_is_a_conflict_that_names_it()
    {
        await using var app = await RunningApp.StartAsync();
        await app.PostAsync(ApiRoutes.Offcuts, RunningApp.Entry("W1"));

        var problem = await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.Offcuts, RunningApp.Entry("w1")), 409);

        Assert.Equal("w1", Assert.Single(problem.Problems).Found);
    }

    [Fact]
    public async Task A_row_that_is_not_there_is_not_found()
    {
        await using var app = await RunningApp.StartAsync();

        await RunningApp.ReadProblemAsync(await app.PutAsync(ApiRoutes.Offcut(7), RunningApp.Entry("W1")), 404);
        await RunningApp.ReadProblemAsync(await app.Http.DeleteAsync(ApiRoutes.Offcut(7)), 404);
        await RunningApp.ReadProblemAsync(await app.Http.PostAsync(ApiRoutes.OffcutRestore(7), null), 404);
    }

    [Fact]
    public async Task Two_hundred_requests_at_once_keep_every_offcut_once()
    {
        await using var app = await RunningApp.StartAsync();

        var answers = await Task.WhenAll(Enumerable.Range(0, 200).Select(_ => app.PostAsync(ApiRoutes.Offcuts, RunningApp.Entry(""))));

        Assert.All(answers, a => Assert.Equal(HttpStatusCode.Created, a.StatusCode));
        var rows = await app.GetAsync<ImmutableArray<OffcutRow>>(ApiRoutes.Offcuts);
        Assert.Equal(200, rows.Select(r => r.Offcut.Label).Distinct().Count());
    }
}
