using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Tests.Measures;

/// <summary>
/// Fractions of an inch against exact millimetres. Source: 1 in = 25.4 mm exactly (international yard and pound agreement, 1959: 1 yd = 0.9144 m),
/// so 1/64 in = 0.396875 mm. The rows were worked out in exact decimals outside this program.
/// </summary>
public sealed class LengthReferenceTests
{
    public static TheoryData<int, string> SixtyFourths => new()
    {
        { 1, "0.396875" }, { 2, "0.79375" }, { 3, "1.190625" }, { 4, "1.5875" },
        { 5, "1.984375" }, { 6, "2.38125" }, { 7, "2.778125" }, { 8, "3.175" },
        { 9, "3.571875" }, { 10, "3.96875" }, { 11, "4.365625" }, { 12, "4.7625" },
        { 13, "5.159375" }, { 14, "5.55625" }, { 15, "5.953125" }, { 16, "6.35" },
        { 17, "6.746875" }, { 18, "7.14375" }, { 19, "7.540625" }, { 20, "7.9375" },
        { 21, "8.334375" }, { 22, "8.73125" }, { 23, "9.128125" }, { 24, "9.525" },
        { 25, "9.921875" }, { 26, "10.31875" }, { 27, "10.715625" }, { 28, "11.1125" },
        { 29, "11.509375" }, { 30, "11.90625" }, { 31, "12.303125" }, { 32, "12.7" },
        { 33, "13.096875" }, { 34, "13.49375" }, { 35, "13.890625" }, { 36, "14.2875" },
        { 37, "14.684375" }, { 38, "15.08125" }, { 39, "15.478125" }, { 40, "15.875" },
        { 41, "16.271875" }, { 42, "16.66875" }, { 43, "17.065625" }, { 44, "17.4625" },
        { 45, "17.859375" }, { 46, "18.25625" }, { 47, "18.653125" }, { 48, "19.05" },
        { 49, "19.446875" }, { 50, "19.84375" }, { 51, "20.240625" }, { 52, "20.6375" },
        { 53, "21.034375" }, { 54, "21.43125" }, { 55, "21.828125" }, { 56, "22.225" },
        { 57, "22.621875" }, { 58, "23.01875" }, { 59, "23.415625" }, { 60, "23.8125" },
        { 61, "24.209375" }, { 62, "24.60625" }, { 63, "25.003125" }, { 64, "25.4" },
    };

    [Theory]
    [MemberData(nameof(SixtyFourths))]
    public void Sixty_fourths_of_an_inch_are_exact_millimetres(int sixtyFourths, string millimetres)
    {
        var length = Length.FromInches(sixtyFourths, 64);

        Assert.Equal(millimetres + " mm", length.ToExactText(LengthUnit.Millimetre));
        Assert.Equal(length, LengthParser.Parse($"{sixtyFourths}/64", LengthUnit.Inch).Value);
        Assert.Equal(length, LengthParser.Parse(millimetres, LengthUnit.Millimetre).Value);
    }

    [Fact]
    public void A_yard_is_914_point_4_millimetres() => Assert.Equal(Length.FromMicrometres(914_400), Length.FromFeet(3));
}
