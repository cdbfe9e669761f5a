using Bunit;
using Scrapwright.Client.Api;
using Scrapwright.Client.Gifts;
using Scrapwright.Core.Designs;
using Scrapwright.Core.Gifts;

namespace Scrapwright.Client.Tests.Gifts;

public sealed class GiftFormTests : ScreenContext
{
    private static readonly DesignFamily Squares = DesignCatalogue.Families[0];

    private static DesignParameter Count => Squares.Parameters.First(p => p.Kind == ParameterKind.Count);

    [Fact]
    public async Task Every_parameter_of_the_design_has_a_field_with_its_hint()
    {
        var form = await ShowAsync();

        foreach (var parameter in Squares.Parameters)
        {
            Assert.NotNull(form.Find($"#option-{parameter.Key}"));
            Assert.StartsWith(parameter.Hint, form.Find($"#option-{parameter.Key}-hint").TextContent);
        }
    }

    [Fact]
    public async Task Parts_follow_what_is_filled_in()
    {
        var form = await ShowAsync();

        form.Find($"#option-{Count.Key}").Input("6");

        Assert.Equal("6", form.Find(".parts li .figure").TextContent);
    }

    [Fact]
    public async Task A_wrong_option_is_told_with_found_and_expected_and_not_sent()
    {
        var form = await ShowAsync();

        form.Find($"#option-{Count.Key}").Input("-3");
        form.Find("form").Submit();

        Assert.Contains("Found “-3”, expected", form.Find($"#option-{Count.Key}-hint").TextContent);
        Assert.Equal("true", form.Find($"#option-{Count.Key}").GetAttribute("aria-invalid"));
        Assert.DoesNotContain(Far.Requests, r => r.StartsWith("POST", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Only_options_that_differ_from_the_design_are_sent()
    {
        var form = await ShowAsync();
        form.Find("#gift-recipient").Input("Ada");
        form.Find($"#option-{Count.Key}").Input("6");

        form.Find("form").Submit();

        var gift = Assert.Single(Far.Gifts).Gift;
        Assert.Equal("Ada", gift.Label);
        Assert.Equal(new KeyValuePair<string, string>(Count.Key, "6"), Assert.Single(gift.Options));
    }

    [Fact]
    public async Task A_label_in_use_is_refused_here_already()
    {
        Far.Gifts.Add(new(7, new Gift { Label = "Ada", Design = Squares.Key }));
        var form = await ShowAsync();

        form.Find("#gift-label").Input("ada");
        form.Find("form").Submit();

        Assert.Contains("expected a label that no other gift has", form.Find("#gift-label-hint").TextContent);
        Assert.Single(Far.Gifts);
    }

    [Fact]
    public async Task Where_it_will_live_is_chosen_among_the_climates()
    {
        var form = await ShowAsync();
        form.Find("#gift-recipient").Input("Ada");

        form.Find("#gift-climate").Change("hot-dry");
        form.Find("form").Submit();

        Assert.Equal("hot-dry", Assert.Single(Far.Gifts).Gift.Climate);
        Assert.StartsWith("Wood there holds ", form.Find("#gift-climate-hint").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_gift_that_is_changed_keeps_its_air_and_finish()
    {
        await Workshop.LoadAsync();
        var row = new GiftRow(7, new Gift { Label = "Ada", Design = Squares.Key, Climate = "Hot-Dry", Finish = "drying-oil" });
        Far.Gifts.Add(row);
        var form = Render<GiftForm>(parameters => parameters.Add(f => f.Row, row));

        form.Find("#gift-recipient").Input("Ada");
        form.Find("form").Submit();

        Assert.Equal(("Ada", "hot-dry", "drying-oil"), (Far.Gifts[0].Gift.Recipient, Far.Gifts[0].Gift.Climate, Far.Gifts[0].Gift.Finish));
    }

    private async Task<IRenderedComponent<GiftForm>> ShowAsync()
    {
        await Workshop.LoadAsync();
        return Render<GiftForm>();
    }
}
