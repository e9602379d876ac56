using Pattress.Brackets;

namespace Pattress.Tests.Brackets;

public class BoardUnderPlateTests
{
    /// <summary>
    /// Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, Table 23, infinite strip: 0.01695 printed (from memory).
    /// The series' sum in closed form is 7 zeta(3) / (16 pi³) = 0.016961; the print is a unit of its last digit low.
    /// </summary>
    [Fact]
    public void Strip_in_the_middle()
    {
        Assert.Equal(0.01695, BoardUnderPlate.StripSinking(0.5), 1.2e-5);
        Assert.Equal(7 * 1.2020569031595943 / (16 * Math.Pow(Math.PI, 3)), BoardUnderPlate.StripSinking(0.5), 1e-7);
        Assert.Equal(0, BoardUnderPlate.StripSinking(0), 1e-12);
    }

    /// <summary>Check L-STRIP-W: 100 N in the middle of 400 and 600 mm sink 0.63984 and 1.43964 mm with 0.01695; 0.07 % for the fuller coefficient.</summary>
    [Theory]
    [InlineData(400, 0.63984)]
    [InlineData(600, 1.43964)]
    public void Board_sinks_as_the_strip_does(double span, double sinking)
    {
        var board = new BoardGive(12.5, span, 2500, 2500, 1e12, 1e12);
        double modulus = BoardUnderPlate.Modulus(board, 1000, span / 2, span / 2).Low;
        Assert.Equal(sinking, 100 / 1000.0 / modulus, 1e-3 * sinking);
    }

    [Fact]
    public void Over_a_support_only_the_thickness_gives_and_the_range_is_in_order()
    {
        var board = BoardGive.Gypsum(12.5, 600);
        var range = BoardUnderPlate.Modulus(board, 4000, 0, 300);
        Assert.Equal(1000 / 12.5, range.High, 1e-9);
        Assert.True(range.Low < range.High && range.Low > 0);
    }
}
