using System.Collections.Immutable;
using Scrapwright.Client.Api;
using Scrapwright.Core.Measures;

namespace Scrapwright.Web.Tests.Offcuts;

public sealed class PasteTests
{
    private const string Lines = "walnut 14 3/8 x 2 1/8 x 7/8\r\n\r\ngibberish\nmaple 12 x 2 x 3/4\r";

    [Fact]
    public async Task Lines_that_are_understood_are_added_and_the_others_come_back()
    {
        await using var app = await RunningApp.StartAsync();

        var result = await RunningApp.ReadAsync<PasteResult>(await app.PostAsync(ApiRoutes.OffcutsPaste, new PasteRequest(Lines)));

        Assert.Equal([Length.FromInches(115, 8), Length.FromInches(12)], result.Added.Select(r => r.Offcut.Length));
        Assert.All(result.Added, r => Assert.NotEmpty(r.Offcut.Label));
        var problem = Assert.Single(result.NotUnderstood);
        Assert.Equal((3, "gibberish"), (problem.Line, problem.Text));
        Assert.NotEmpty(problem.Expected);
        Assert.Equal(2, (await app.GetAsync<ImmutableArray<OffcutRow>>(ApiRoutes.Offcuts)).Length);
    }

    [Fact]
    public async Task All_or_nothing_adds_nothing_when_a_line_is_not_understood()
    {
        await using var app = await RunningApp.StartAsync();

        var result = await RunningApp.ReadAsync<PasteResult>(await app.PostAsync(ApiRoutes.OffcutsPaste, new PasteRequest(Lines, AllOrNothing: true)));

        Assert.Empty(result.Added);
        Assert.Single(result.NotUnderstood);
        Assert.Empty(await app.GetAsync<ImmutableArray<OffcutRow>>(ApiRoutes.Offcuts));
    }

    [Fact]
    public async Task Forty_lines_give_forty_offcuts_with_labels_of_their_own()
    {
        await using var app = await RunningApp.StartAsync();
        var text = string.Join('\n', Enumerable.Range(1, 40).Select(i => $"{(i % 2 == 0 ? "walnut" : "cherry")} {10 + i} x 2 x 7/8"));

        var result = await RunningApp.ReadAsync<PasteResult>(await app.PostAsync(ApiRoutes.OffcutsPaste, new PasteRequest(text)));

        Assert.Empty(result.NotUnderstood);
        Assert.Equal(40, result.Added.Select(r => r.Offcut.Label).Distinct().Count());
        Assert.Equal(Enumerable.Range(1, 40).Select(i => Length.FromInches(10 + i)), result.Added.Select(r => r.Offcut.Length));
    }

    [Fact]
    public async Task Twelve_megabytes_of_garbage_are_too_much_and_nothing_is_added()
    {
        await using var app = await RunningApp.StartAsync();

        var response = await app.PostAsync(ApiRoutes.OffcutsPaste, new PasteRequest(new string('x', 12_000_000)));

        await RunningApp.ReadProblemAsync(response, 413);
        Assert.Empty(await app.GetAsync<ImmutableArray<OffcutRow>>(ApiRoutes.Offcuts));
    }

    [Fact]
    public async Task Three_megabytes_in_one_line_are_too_much_too()
    {
        await using var app = await RunningApp.StartAsync();

        await RunningApp.ReadProblemAsync(await app.PostAsync(ApiRoutes.OffcutsPaste, new PasteRequest(new string('\u0001', 600_000) + new string('9', 500_000))), 413);
    }
}
