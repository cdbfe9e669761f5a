using CsCheck;
using Scrapwright.Core.Wood;

namespace Scrapwright.Core.Tests.Wood;

public sealed class SpellingTests
{
    private static readonly Gen<string> Word = Gen.Char['a', 'd'].Array[0, 8].Select(letters => new string(letters));

    // By hand, from the definition.
    [Theory]
    [InlineData("", "", 0)]
    [InlineData("", "oak", 3)]
    [InlineData("mapel", "maple", 1)]
    [InlineData("wallnut", "walnut", 1)]
    [InlineData("chery", "cherry", 1)]
    [InlineData("wengé", "wenge", 1)]
    [InlineData("kitten", "sitting", 3)]
    [InlineData("ca", "abc", 3)]
    public void Distance_counts_edits(string left, string right, int edits) => Assert.Equal(edits, Spelling.Distance(left, right));

    [Fact]
    public void Distance_is_symmetric_and_zero_only_when_equal() =>
        Gen.Select(Word, Word).Sample((left, right) =>
            Spelling.Distance(left, right) == Spelling.Distance(right, left) && Spelling.Distance(left, right) == 0 == (left == right));

    [Fact]
    public void Swapping_two_neighbours_is_one_edit_at_most() =>
        Gen.Select(Word.Where(word => word.Length >= 2), Gen.Int[0, 6]).Sample((word, place) =>
        {
            int at = place % (word.Length - 1);
            string swapped = $"{word[..at]}{word[at + 1]}{word[at]}{word[(at + 2)..]}";
            return Spelling.Distance(word, swapped) <= 1;
        });
}
