namespace Scrapwright.Cli.Tests;

public sealed class WoodCommandTests
{
    // [WoodHandbook] Table 13-5 and eq. 13-2: 4 · 0.00274 · 6 = 0.066 in, which is 4.2 sixty-fourths; Table 5-3b: 1010 lbf.
    [Fact]
    public async Task A_wood_is_told_with_its_numbers_cautions_and_sources()
    {
        var ran = await Program.RunAsync("wood", "Black Walnut");

        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.StartsWith("walnut: Black walnut, Juglans nigra\nA board 4 in wide, from 6 % to 12 % water:\n  Moves, flat-sawn      1/16 in (0.066 in)\n", ran.Output, StringComparison.Ordinal);
        Assert.Contains("  Hardness              1010 lbf\n", ran.Output, StringComparison.Ordinal);
        Assert.Contains("[ToxicWoods1990]", ran.Output, StringComparison.Ordinal);
        Assert.Contains("mg/m³ inhalable dust, hardwood", ran.Output, StringComparison.Ordinal);
        Assert.Contains("  Movement: WoodHandbook, Table 13-5\n", ran.Output, StringComparison.Ordinal);
        ran.IsPlain();
    }

    [Fact]
    public async Task Two_woods_stand_side_by_side_in_millimetres()
    {
        var ran = await Program.RunAsync("wood", "walnut", "hard maple", "--unit", "mm");

        Assert.Equal((0, ""), (ran.Code, ran.Error));
        // 100 · 0.00274 · 6 = 1.644 and 100 · 0.00353 · 6 = 2.118 mm.
        Assert.Matches(@"Moves, flat-sawn +1\.6 mm +2\.1 mm +\+0\.5 mm\n", ran.Output);
        Assert.Contains("  Fresh   strong contrast, much lighter, ΔE ", ran.Output, StringComparison.Ordinal);
        Assert.Contains("; told apart without colour\n", ran.Output, StringComparison.Ordinal);
        ran.IsPlain();
    }

    [Theory]
    [InlineData("wallnut", null, "SPECIES: found “wallnut”, expected the name of a wood; maybe walnut")]
    [InlineData("walnut", "xyzzy", "OTHER: found “xyzzy”, expected the name of a wood.")]
    [InlineData("", null, "SPECIES: something is missing, expected the name of a wood.")]
    public async Task A_wood_nobody_knows_is_refused_with_the_nearest(string species, string? other, string said)
    {
        var ran = await Program.RunAsync(other is null ? ["wood", species] : ["wood", species, other]);

        Assert.Equal((2, ""), (ran.Code, ran.Output));
        Assert.StartsWith(said, ran.Error, StringComparison.Ordinal);
        ran.IsPlain();
    }
}
