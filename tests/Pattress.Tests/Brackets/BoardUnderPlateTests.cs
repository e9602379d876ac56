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

    /// <summary>
    /// By hand for 12.5 mm: D soft 2000 · 1953.125/11.52 = 339,084, stiff 508,626. Toe 600 mm², 60 mm: 600 · 3600 · 3.2/(16 pi D · 1.2) + 12.5/100 = 0.46294; 40 mm: 600 · 1600/(16 pi D) + 0.0125 = 0.05005.
    /// The planner's interval for gypsum board is that, rounded outwards.
    /// </summary>
    [Fact]
    public void Between_a_toe_and_a_fixing_in_the_same_board()
    {
        var range = BoardUnderPlate.BesideFixing(BoardGive.Gypsum(12.5, 600), 600, 40, 60);
        Assert.Equal(1 / 0.46294, range.Low, 1e-4);
        Assert.Equal(1 / 0.05005, range.High, 1e-2);
        var taken = Pattress.Planning.StiffnessData.Bed("gypsum_board");
        Assert.InRange(range.Low, taken.Low, 1.1 * taken.Low);
        Assert.InRange(range.High, 0.95 * taken.High, taken.High);
    }

    /// <summary>A plate on an elastic foundation: w = 1/(2 pi) ∫ s ds/(D s⁴ + k), Hankel's integral, by the trapezoid rule in ln s; the foam 3 MPa over 50 mm.</summary>
    [Fact]
    public void A_laminate_lies_on_its_foam()
    {
        var board = new BoardGive(12.5, 600, 2500, 2500, 1e12, 1e12);
        double d = 2500 * Math.Pow(12.5, 3) / 11.52, k = 3 / 50.0, sum = 0;
        const double Step = 0.001;
        for (double x = -25; x < 10; x += Step) sum += Step * Math.Exp(2 * x) / (d * Math.Exp(4 * x) + k);
        var range = BoardUnderPlate.OnFoam(board, 800, k, k);
        Assert.Equal(1 / (800 * sum / (2 * Math.PI)), range.Low, 1e-4 * range.Low);
        Assert.Equal(range.Low, range.High, 1e-9);
        Assert.True(BoardUnderPlate.OnFoam(BoardGive.Gypsum(12.5, 600), 800, 0.02, 0.2) is var wide && wide.Low < range.Low && range.Low < wide.High);
    }

    /// <summary>Two boards of 12.5 mm apart are twice as stiff as one, glued eight times.</summary>
    [Fact]
    public void Doubled_board_is_an_interval()
    {
        var one = new BoardGive(12.5, 600, 2500, 2500, 1e15, 1e15);
        double single = BoardUnderPlate.Modulus(one, 1000, 300, 300).Low;
        var two = BoardUnderPlate.Modulus(one with { Thickness = 25, Layers = 2 }, 1000, 300, 300);
        Assert.Equal(2 * single, two.Low, 1e-9);
        Assert.Equal(8 * single, two.High, 1e-9);
    }

    // By hand as above, rounded outwards to two figures. 12.5 mm: 2.160 to 19.98. 9.5 mm: D soft 2000 x 857.375 / 11.52 = 148,850, stiff 223,275: the dish 600 x 3600 x
    // 3.2 / (16 pi D 1.2) = 0.76984 and 600 x 1600 / (16 pi D) = 0.085536, the thickness 0.095 and 0.0095: 1.156 to 10.52. Two of 12.5: soft D twice that of one, stiff eight
    // times: 0.16897 + 0.25 and 0.0046937 + 0.025: 2.387 to 33.68.
    [Theory]
    [InlineData(12.5, 1, 2.1, 20), InlineData(9.5, 1, 1.1, 11), InlineData(25, 2, 2.3, 34)]
    public void Bed_of_the_plan_by_the_board_itself(double thickness, int boards, double low, double high)
    {
        var taken = Pattress.Planning.StiffnessData.Bed(Board(thickness, boards, 0));
        Assert.Equal((low, high), (Math.Round(taken.Low, 9), Math.Round(taken.High, 9)));
    }

    // Glued to 40 mm of foam of 2 to 10 N/mm2 (assumed): k = 0.05 to 0.25 N/mm3; 600 / (8 sqrt(0.05 x 339,084)) + 0.125 = 0.70100, so 1.4265 at the soft end; the stiff end of the
    // foam, 1 / (600 / (8 sqrt(0.25 x 508,626)) + 0.0125) = 4.487, lies below that of the dish.
    [Fact]
    public void Bed_of_a_laminate_in_the_plan()
    {
        var taken = Pattress.Planning.StiffnessData.Bed(Board(12.5, 1, 40));
        Assert.Equal((1.4, 20.0), (Math.Round(taken.Low, 9), Math.Round(taken.High, 9)));
        // Into the stud behind the board it is the stud's.
        Assert.Equal(Pattress.Planning.StiffnessData.Bed("timber"), Pattress.Planning.StiffnessData.Bed(Board(12.5, 1, 0) with { Base = "timber" }));
    }

    private static Pattress.Fixings.Spot Board(double thickness, int boards, double foam)
    {
        var none = Pattress.Fixings.Spread.None;
        var layers = Enumerable.Repeat(new Pattress.Jobs.SectionLayer("board", thickness / boards, 0), boards).ToList();
        if (foam > 0) layers.Add(new("foam", foam, 0));
        return new("timber_studs.12_5", foam > 0 ? Pattress.Fixings.Behind.BoardFoam : Pattress.Fixings.Behind.BoardVoid, new(thickness, 0), new(90, 0), none, new(0, 0), none, "gypsum_board", layers);
    }
}
