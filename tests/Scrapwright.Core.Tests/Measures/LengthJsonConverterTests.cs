using System.Text;
using System.Text.Json;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Tests.Measures;

public sealed class LengthJsonConverterTests
{
    private static readonly JsonSerializerOptions SmallPieces = new() { DefaultBufferSize = 16 };

    [Theory]
    [InlineData(9_525_000_000, """{"pm":9525000000,"in":"3/8","mm":"9.525"}""")]
    [InlineData(-34_925_000_000, """{"pm":-34925000000,"in":"-1 3/8","mm":"-34.925"}""")]
    [InlineData(0, """{"pm":0,"in":"0","mm":"0"}""")]
    [InlineData(609_600_000_000, """{"pm":609600000000,"in":"24","mm":"609.6"}""")]
    [InlineData(2_540_000, """{"pm":2540000,"in":"0.0001","mm":"0.00254"}""")]
    [InlineData(365_000_000_000, """{"pm":365000000000,"in":"≈ 14 3/8","mm":"365"}""")]
    public void Write_gives_picometres_inches_and_millimetres(long picometres, string json) =>
        Assert.Equal(json, JsonSerializer.Serialize(Length.FromPicometres(picometres)));

    [Theory]
    [InlineData("""{"pm":5}""")]
    [InlineData("""{"mm":"7","in":{"x":[1]},"pm":5,"later":[1,{"pm":3}]}""")]
    public void Read_takes_pm_and_ignores_the_rest(string json) =>
        Assert.Equal(5, JsonSerializer.Deserialize<Length>(json).Picometres);

    [Fact]
    public void Read_takes_a_text_with_its_unit() =>
        Assert.Equal(Length.FromInches(115, 8), JsonSerializer.Deserialize<Length>("\"14 3/8 in\""));

    [Theory]
    [InlineData("""{"mm":"9.5"}""")]
    [InlineData("{}")]
    [InlineData("""{"pm":1.5}""")]
    [InlineData("""{"pm":"5"}""")]
    [InlineData("""{"pm":9223372036854775808}""")]
    [InlineData("5")]
    [InlineData("null")]
    [InlineData("[5]")]
    [InlineData("true")]
    [InlineData("\"14\"")]
    [InlineData("\"\"")]
    [InlineData("\"3/0 in\"")]
    public void Read_refuses_the_rest_and_says_what_is_expected(string json)
    {
        var exception = Assert.Throws<JsonException>(() => JsonSerializer.Deserialize<Length>(json));

        Assert.StartsWith(Messages.LengthJsonExpected, exception.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Read_works_on_a_stream_in_small_pieces()
    {
        var json = "[" + string.Join(',', Enumerable.Range(0, 500).Select(i => $$"""{"in":"{{new string('x', 50)}}","pm":{{i}}}""")) + "]";
        await using var stream = new MemoryStream(Encoding.UTF8.GetBytes(json));

        var lengths = await JsonSerializer.DeserializeAsync<Length[]>(stream, SmallPieces);

        Assert.Equal(Enumerable.Range(0, 500).Select(i => (long)i), lengths!.Select(length => length.Picometres));
    }
}
