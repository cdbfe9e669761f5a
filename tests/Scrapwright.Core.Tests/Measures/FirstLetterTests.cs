using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Tests.Measures;

public sealed class FirstLetterTests
{
    [Theory]
    [InlineData("make it", "Make it", "make it")]
    [InlineData("Stand with U-shaped sides", "Stand with U-shaped sides", "stand with U-shaped sides")]
    [InlineData("ß", "ß", "ß")]
    [InlineData("", "", "")]
    public void Only_the_first_letter_changes(string text, string large, string small) => Assert.Equal((large, small), (FirstLetter.Large(text), FirstLetter.Small(text)));
}
