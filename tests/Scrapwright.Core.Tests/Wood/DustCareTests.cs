using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Wood;

public sealed class DustCareTests
{
    [Theory]
    [InlineData("northern-red-oak", DustMask.Finest, true, true)] // class A1; eyes and skin
    [InlineData("black-cherry", DustMask.Finest, false, false)] // hardwood
    [InlineData("eastern-white-pine", DustMask.Fine, false, false)]
    [InlineData("western-redcedar", DustMask.Finest, false, false)] // breathing
    [InlineData("young-growth-redwood", DustMask.Finest, true, true)]
    public void Care_follows_the_wood(string key, DustMask mask, bool goggles, bool skin)
    {
        var care = DustCare.For(SpeciesTable.Get(key));

        Assert.Equal((mask, goggles, skin), (care.Mask, care.NeedsGoggles, care.CoversSkin));
        Assert.StartsWith("Extraction", care.Advice[0], StringComparison.Ordinal);
        Assert.Equal(goggles, care.Advice.Any(line => line.Contains("goggles", StringComparison.Ordinal)));
        Assert.Equal(skin, care.Advice.Any(line => line.Contains("Gloves", StringComparison.Ordinal)));
        Assert.All(care.Advice, line => Assert.Matches(@"(\[\w+\]|Common practice, no source)$", line));
    }
}
