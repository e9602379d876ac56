using Pattress.Fixings;
using Pattress.Jobs;
using Pattress.Planning.Resisting;
using Pattress.Strength.Mechanisms;
using Pattress.Working;

namespace Pattress.Tests.Planning;

/// <summary>Two boards one behind the other are not glued: the plan lets each bend for itself.</summary>
public class DoubledBoardTests
{
    private static readonly Spread Behind90 = new(90, 0);

    private static Spot Of(params double[] boards) => new("timber_studs.12_5", Behind.BoardVoid, new(boards.Sum(), 0), Behind90, Spread.None, new(0, 0), Spread.None,
        "gypsum_board", [.. boards.Select(t => new SectionLayer("board", t, 0))]);

    private static (double Bends, double Across) Carries(string standards, Spot spot)
    {
        var size = FixingCatalogue.FromEmbedded.Sizes.First(s => s.Kind.HoldsBy == HoldsBy.Wings && s.Kind.Into.Contains(Behind.BoardVoid));
        var trace = new Trace();
        var carries = OnBoard.Carries(new(size, spot, Duration.Medium, Dampness.Dry, new Settings { Standards = standards }, 30, 1, 1000), trace);
        return (carries.BendingN, trace.Steps.First(s => s.Symbol == "m_across").Value);
    }

    /// <summary>
    /// ASTM C1396, 1/2 in, weak direction: 36 lbf on a strip of 12 in over 14 in (C473 method B), 36 x 4.4482216 x 355.6 / (4 x 304.8) = 46.70633 N
    /// for each mm of width; two boards, not glued, twice that.
    /// </summary>
    [Fact]
    public void Two_half_inch_boards_bend_as_twice_the_printed_one() => Assert.Equal(2 * 46.70633, Carries("us", Of(12.7, 12.7)).Across, 1e-4);

    /// <summary>ASTM C1396's least loads grow faster than the thickness (36 lbf at 1/2 in, 46 at 5/8, beyond by the square): one thick board would carry more.</summary>
    [Fact]
    public void Two_American_boards_bend_under_less_than_one_of_their_thickness() =>
        Assert.InRange(Carries("us", Of(12.7, 12.7)).Bends, Carries("us", Of(12.7)).Bends * 1.0001, Carries("us", Of(25.4)).Bends * 0.9999);

    /// <summary>EN 520's least loads are in proportion to the thickness (Table 4: 16.8 t and 43 t), so that two boards carry what one of both thicknesses would.</summary>
    [Fact]
    public void Two_European_boards_bend_as_one_by_the_standards_loads() =>
        Assert.Equal(Carries("eurocode_uk", Of(25.4)).Across, Carries("eurocode_uk", Of(12.7, 12.7)).Across, 1e-9);
}
