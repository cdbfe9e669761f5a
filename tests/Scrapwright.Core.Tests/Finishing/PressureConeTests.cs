using CsCheck;
using Scrapwright.Core.Finishing;
using Scrapwright.Core.Measures;

namespace Scrapwright.Core.Tests.Finishing;

public sealed class PressureConeTests
{
    // [Rabiej2007], as summed up in 2010: a 6 in board makes a cone 12 in wide at its joint.
    [Fact]
    public void A_six_inch_board_gives_a_cone_of_twelve() => Assert.Equal(Length.FromInches(12), PressureCone.Covers(Length.FromInches(6)));

    [Fact]
    public void A_caul_makes_up_for_a_narrow_strip()
    {
        // Clamps 6 in apart need 3 in to the glue line; 1 1/2 in of wood is there.
        Assert.Equal(Length.FromInches(3, 2), PressureCone.Caul(Length.FromInches(6), Length.FromInches(3, 2)));
        Assert.Equal(Length.Zero, PressureCone.Caul(Length.FromInches(6), Length.FromInches(3)));
    }

    [Fact]
    public void With_the_caul_neighbouring_cones_always_meet() =>
        Gen.Select(Gen.Long[1, 2_000_000_000_000], Gen.Long[1, 500_000_000_000]).Sample((gap, strip) =>
        {
            var caul = PressureCone.Caul(Length.FromPicometres(gap), Length.FromPicometres(strip));

            return PressureCone.Covers(caul + Length.FromPicometres(strip)) >= Length.FromPicometres(gap);
        });
}
