using Bunit;
using Microsoft.Extensions.DependencyInjection;
using Scrapwright.Client.Shell;
using Scrapwright.Client.Shops;
using Scrapwright.Core.Measures;
using Scrapwright.Core.Shops;

namespace Scrapwright.Client.Tests.Shops;

public sealed class ShopPageTests : ScreenContext
{
    [Fact]
    public async Task A_kerf_is_saved_as_it_is_left()
    {
        var page = await ShowAsync();

        page.Find("#saw-kerf").Change("3/32");

        Assert.Equal(Length.FromInches(3, 32), Far.Shop.TableSaw.Kerf);
        Assert.Equal("3/32 in", page.Find("#saw-kerf").GetAttribute("value"));
    }

    [Fact]
    public async Task A_kerf_that_is_no_size_is_told_and_not_saved()
    {
        var page = await ShowAsync();

        page.Find("#saw-kerf").Change("thin");

        Assert.Contains("found “", page.Find("#saw-kerf-hint").TextContent);
        Assert.Equal(new TableSaw(), Far.Shop.TableSaw);
    }

    [Fact]
    public async Task A_chance_outside_its_limits_is_told_and_not_saved()
    {
        var page = await ShowAsync();

        page.Find("#confidence").Change("100");

        Assert.Contains("Found “100”, expected a whole number from 50 to 99", page.Find("#confidence-hint").TextContent);
        Assert.Equal(95, Far.Shop.ConfidencePercent);
    }

    [Fact]
    public async Task Defaults_of_one_group_leave_the_others_and_can_be_undone()
    {
        Far.Shop = new Shop { TableSaw = new TableSaw { Kerf = Length.FromInches(3, 32) }, Jointer = new Jointer { MaximumWidth = Length.FromInches(8) } };
        var page = await ShowAsync();

        page.Find("#table-saw header button").Click();

        Assert.Equal(new TableSaw(), Far.Shop.TableSaw);
        Assert.Equal(Length.FromInches(8), Far.Shop.Jointer.MaximumWidth);

        await Services.GetRequiredService<Undoing>().UndoLatestAsync();
        Assert.Equal(Length.FromInches(3, 32), Far.Shop.TableSaw.Kerf);
    }

    [Fact]
    public async Task Every_size_of_the_shop_has_a_field()
    {
        var page = await ShowAsync();

        // Every property of a station that is a length: by reflection, so that a new one is not forgotten.
        var sizes = new[] { typeof(Jointer), typeof(Planer), typeof(TableSaw), typeof(Bandsaw), typeof(DrillPress) }
            .SelectMany(t => t.GetProperties()).Count(p => p.PropertyType == typeof(Length));
        Assert.Equal(sizes, StationSettings.All.Sum(s => s.Lengths.Length));
        Assert.All(StationSettings.All.SelectMany(s => s.Lengths), s => Assert.NotNull(page.Find("#" + s.Key)));
    }

    [Fact]
    public async Task One_of_three_usual_chances_is_chosen_with_one_press()
    {
        var page = await ShowAsync();
        Assert.Equal(["80 %4 times in 5 false", "95 %19 times in 20 true", "99 %99 times in 100 false"], Choices());

        await page.FindAll(".chance-choice .choices button")[2].ClickAsync(new());

        Assert.Equal(99, Far.Shop.ConfidencePercent);
        Assert.Equal("99 %99 times in 100 true", Choices()[2]);

        string[] Choices() => [.. page.FindAll(".chance-choice .choices button").Select(b => $"{b.TextContent} {b.GetAttribute("aria-pressed")}")];
    }

    private async Task<IRenderedComponent<ShopPage>> ShowAsync()
    {
        await Workshop.LoadAsync();
        return Render<ShopPage>();
    }
}
