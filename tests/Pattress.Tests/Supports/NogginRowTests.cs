using Pattress.Supports;

namespace Pattress.Tests.Supports;

/// <summary>
/// At the height of a row of noggins something solid between two studs may be one of them (common practice, no source: rows stand at mid
/// height, and where boards laid across join). Shares are those of the table; probabilities of the normal from its error function (Python, math.erf).
/// </summary>
public class NogginRowTests
{
    private const double Mid = 1200;

    /// <summary>Taps along 1,500 up: studs each 600.</summary>
    private static readonly LineScan Studs = new(3600, [.. Enumerable.Range(1, 89).Select(i =>
        new Tap($"t{i:00}", i * 40, Math.Abs((((i * 40) + 300) % 600) - 300) < 26 ? TapSound.Solid : TapSound.Hollow, 1500))], []) { WallHeightMm = 2400 };

    private static LineScan With(LineReading reading) => Studs with { Readings = [.. Studs.Readings, reading] };

    [Fact]
    public void How_likely_a_noggin_is_at_a_height()
    {
        // 0.5 x P(|N(0, 40)| < 19) at mid height, which is where two boards of 1,200 join as well.
        Assert.Equal(0.182607, NogginRows.Of(Studs, LinePriors.Default).At(Mid), 1e-6);
        // 2,500 high: a joint at 1,200 and, 50 above it, the row at mid height: 1 - (1 - 0.354662) (1 - 0.088453) at the joint.
        Assert.Equal(1 - ((1 - 0.354662) * (1 - 0.088453)), NogginRows.Of(Studs with { WallHeightMm = 2500 }, LinePriors.Default).At(1200), 1e-5);
        Assert.Equal(0, NogginRows.Of(Studs, LinePriors.Default).At(700), 1e-6);
        Assert.Equal(0, NogginRows.Of(Studs with { WallHeightMm = 0 }, LinePriors.Default).At(Mid));
    }

    [Fact]
    public void A_hole_that_met_wood_between_studs_at_mid_height_hardly_speaks_for_a_stud_there()
    {
        double before = SupportModel.Infer(Studs).HitAt(900);
        var belief = SupportModel.Infer(With(new ThinHole("h", 900, HoleMet.Support, Mid)));
        // By hand: odds x .98 / (.8174 x .01 + .1826 x .98), so that wood there is one stud in five at most, whatever was believed before.
        double odds = before / (1 - before) * 0.98 / ((0.817393 * 0.01) + (0.182607 * 0.98));
        Assert.Equal(odds / (1 + odds), belief.HitAt(900), 0.01);
        // The noggin itself was found: a hole beside that one, at its height, meets it; away from its height nothing is there.
        Assert.InRange(belief.HitAt(920, Mid), 0.9, 1);
        Assert.Equal(belief.HitAt(900), belief.HitAt(900, 600), 1e-12);
    }

    [Fact]
    public void The_same_hole_away_from_any_row_speaks_for_a_stud() =>
        Assert.True(SupportModel.Infer(With(new ThinHole("h", 900, HoleMet.Support, 700))).HitAt(900) > 2 * SupportModel.Infer(With(new ThinHole("h", 900, HoleMet.Support, Mid))).HitAt(900));

    [Fact]
    public void Solid_places_along_a_row_of_noggins_leave_the_studs_where_they_are()
    {
        var bare = SupportModel.Infer(Studs);
        var row = SupportModel.Infer(Studs with { Readings = [.. Studs.Readings, .. Enumerable.Range(0, 8).Select(i => new Tap($"n{i}", 700 + (60 * i), TapSound.Solid, Mid))] });
        foreach (double stud in new[] { 600.0, 1200, 1800, 2400 }) Assert.Equal(bare.HitAt(stud), row.HitAt(stud), 0.03);
        foreach (double between in new[] { 760.0, 900, 1040 }) Assert.True(row.HitAt(between) < 0.1);
    }

    [Fact]
    public void A_sweep_along_the_row_that_draws_between_studs_does_not_make_one()
    {
        var sweep = new MagnetSweep("m", 650, 1150, [800, 930], Mid);
        var known = SupportModel.Infer(With(sweep));
        var unknown = SupportModel.Infer(With(sweep) with { WallHeightMm = 0 });
        Assert.True(known.HitAt(930) < unknown.HitAt(930));
        Assert.Equal(SupportModel.Infer(Studs).HitAt(1200), known.HitAt(1200), 0.03);
    }

    [Fact] // odds by hand from the rates of the table: metal noted of a steel stud .98 x .64, beside one .004
    public void Metal_speaks_for_a_steel_support_and_not_for_a_timber_one()
    {
        LinePriors steel = LinePriors.Default with { SteelShare = 1, RenewalShare = 0, DabShare = 0 }, timber = LinePriors.Default with { SteelShare = 0, RenewalShare = 0, DabShare = 0 };
        var bare = new LineScan(3600, [], []);
        var hole = bare with { Readings = [new ThinHole("h", 1700, HoleMet.Metal)] };
        double before = SupportModel.Infer(bare, priors: steel).HitAt(1700), odds = before / (1 - before) * 0.98 * 0.64 / 0.004;
        Assert.Equal(odds / (1 + odds), SupportModel.Infer(hole, priors: steel).HitAt(1700), 0.01);
        Assert.Equal(SupportModel.Infer(bare, priors: timber).HitAt(1700), SupportModel.Infer(hole, priors: timber).HitAt(1700), 1e-9);
        // One stud wall in five is of steel: where metal was met it mostly is.
        Assert.True(SupportModel.Infer(hole).SteelProbability > 0.5);
    }

    [Theory] // noted a fifth as often over a support: laths and foam are passed on the way, masonry is met where none is
    [InlineData(HoleMet.Passed)]
    [InlineData(HoleMet.Masonry)]
    public void Laths_foam_and_masonry_speak_against_a_support(HoleMet met)
    {
        double before = SupportModel.Infer(Studs).HitAt(1200);
        var belief = SupportModel.Infer(With(new ThinHole("h", 1200, met, 700)));
        double odds = before / (1 - before) * 0.2, studs = 1 - belief.DabProbability;
        Assert.Equal(odds / (1 + odds), belief.HitAt(1200) / studs, 0.03);
    }

    /// <summary>
    /// Facts of the trade: a row of noggins goes from bay to bay, in line or staggered by a timber's thickness. By hand: .8 of rows go on, half of them in line, where the
    /// hole meets it for certain; with one void in the next bay, half of which is a stagger, 1.6 of 2.5 do; with one more that met, 2.6 of 3.
    /// </summary>
    [Fact]
    public void A_row_found_in_one_bay_is_carried_to_the_others()
    {
        var found = new ThinHole("h", 900, HoleMet.Support, Mid);
        var belief = SupportModel.Infer(With(found));
        double noggin = belief.HitAt(900, Mid) - belief.HitAt(900), stud = belief.HitAt(2100);
        Assert.Equal(noggin * 0.8 * 0.5, belief.HitAt(2100, Mid) - stud, 0.01);
        Assert.Equal(stud, belief.HitAt(2100, 700), 1e-9);
        double Then(HoleMet met) => SupportModel.Infer(With(found) is var s ? s with { Readings = [.. s.Readings, new ThinHole("i", 1500, met, Mid)] } : s) is var b ? b.HitAt(2100, Mid) - b.HitAt(2100) : 0;
        Assert.Equal(noggin * 1.6 / 2.5 * 0.5, Then(HoleMet.Void), 0.02);
        Assert.Equal(noggin * 2.6 / 3 * 0.5, Then(HoleMet.Support), 0.02);
    }

    [Fact] // facts: a stud is 38 mm wide, two nailed together 76; noggins lie between studs at their own height
    public void Wood_all_along_is_named_and_a_noggin_is_no_contradiction()
    {
        LineScan holes = new(3600, [.. new[] { 1200.0, 1260, 1320 }.Select(x => new ThinHole($"h{x}", x, HoleMet.Support, 700))], []) { WallHeightMm = 2400 };
        Assert.Equal("holes_all_wood", Assert.Single(SupportModel.Infer(holes).Contradictions).What.Code);
        LineScan noggin = new(3600, [new ThinHole("a", 900, HoleMet.Support, Mid), new ThinHole("b", 900, HoleMet.Void, 600)], []) { WallHeightMm = 2400 };
        Assert.Empty(SupportModel.Infer(noggin).Contradictions);
        Assert.Single(SupportModel.Infer(noggin with { WallHeightMm = 0 }).Contradictions);
    }
}
