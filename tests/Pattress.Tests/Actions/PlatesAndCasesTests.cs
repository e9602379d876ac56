using Pattress.Actions;
using Pattress.Actions.Fixtures;
using Pattress.Jobs;
using static Pattress.Tests.Actions.FixtureSamples;
using static Pattress.Tests.Actions.HandWork;

namespace Pattress.Tests.Actions;

/// <summary>What holds for every kind: plates, cases, classes, cautions and the combination.</summary>
public sealed class PlatesAndCasesTests
{
    private static BracketPlate Plate(double width, double height, double holes) =>
        Of("hook", ("bracket_width_mm", width), ("bracket_height_mm", height), ("holes", holes)).Load().Brackets[0].Plate;

    // Holes 10 mm in from the edge (assumed), a fifth of a narrow side: of 40 x 100 at +-12 and +-40.
    public static TheoryData<int, (double X, double Y)[]> Upright => new()
    {
        { 1, [(0, 0)] }, { 2, [(0, 40), (0, -40)] }, { 3, [(0, 40), (-12, -40), (12, -40)] }, { 4, [(-12, 40), (12, 40), (-12, -40), (12, -40)] },
        { 5, [(0, 40), (-12, 0), (12, 0), (-12, -40), (12, -40)] }, { 6, [(-12, 40), (12, 40), (-12, 0), (12, 0), (-12, -40), (12, -40)] },
        { 7, [(0, 40), (-12, 40 - 80 / 3.0), (12, 40 - 80 / 3.0), (-12, 40 - 160 / 3.0), (12, 40 - 160 / 3.0), (-12, -40), (12, -40)] },
    };

    [Theory]
    [MemberData(nameof(Upright))]
    public void Holes_of_a_measured_plate(int holes, (double X, double Y)[] expected)
    {
        var found = Plate(40, 100, holes).Holes;
        Assert.Equal(expected.Length, found.Count);
        for (int i = 0; i < holes; i++)
        {
            Assert.Equal(expected[i].X, found[i].X, 1e-9);
            Assert.Equal(expected[i].Y, found[i].Y, 1e-9);
        }
    }

    [Fact]
    public void Plates_by_hand()
    {
        Assert.Equal([new(-20, -50), new(20, -50), new(20, 50), new(-20, 50)], Plate(40, 100, 2).Outline);
        // A wide one has its pair level: 100 / 2 - 10; a square one upright, 25 - 10.
        Assert.Equal([new(-40, 0), new(40, 0)], Plate(100, 40, 2).Holes);
        Assert.Equal([new(0, 15), new(0, -15)], Plate(50, 50, 2).Holes);
        // A flange nobody measured is a disc of 55 mm in 24 corners, its holes as in the table.
        var flange = Of("towel_rail").Load().Brackets[0].Plate;
        Assert.Equal(24, flange.Outline.Count);
        Assert.Equal((27.5, 0.0), (flange.Outline[0].X, flange.Outline[0].Y));
        Assert.Equal((0, 27.5), (Math.Round(flange.Outline[6].X, 9), flange.Outline[6].Y));
        Assert.Equal(27.5 / Math.Sqrt(2), flange.Outline[3].X, 1e-9);
        Assert.Equal(27.5 / Math.Sqrt(2), flange.Outline[3].Y, 1e-9);
        Assert.All(flange.Outline, c => Assert.Equal(27.5, Math.Sqrt(c.X * c.X + c.Y * c.Y), 1e-9));
        Assert.Equal([new(0, 18), new(0, -18)], flange.Holes);
        Assert.True(flange.Assumed);
        Assert.Equal(3, flange.ThicknessMm);
        // Part measured: a rectangle, the rest from the table, still assumed.
        var wide = Of("towel_rail", ("bracket_width_mm", 70)).Load().Brackets[0].Plate;
        Assert.Equal([new(-35, -27.5), new(35, -27.5), new(35, 27.5), new(-35, 27.5)], wide.Outline);
        Assert.Equal([new(-25, 0), new(25, 0)], wide.Holes);
        Assert.True(wide.Assumed);
        Assert.Equal(5, Of("hook", ("bracket_thickness_mm", 5)).Load().Brackets[0].Plate.ThicknessMm);
        (string, double)[] all = [("bracket_width_mm", 40), ("bracket_height_mm", 60), ("holes", 2)];
        foreach (var left in all) Assert.True(Of("hook", [.. all.Where(p => p != left)]).Load().Brackets[0].Plate.Assumed);
        Assert.False(Plate(40, 60, 2).Assumed);
    }

    public static TheoryData<string> Kinds => [.. FixtureCatalogue.Kinds.Where(k => !k.LicensedTrade).Select(k => k.Id)];

    // Where nothing varies nothing is said to; what hangs for good is permanent, what lies there long term or medium, what people do is sudden.
    // The coefficients of variation are the table's: 0.35 of people, 0.25 of contents and of standards' loads (assumed).
    [Theory]
    [MemberData(nameof(Kinds))]
    public void Cases_say_how_long_and_how_much_they_vary(string what)
    {
        foreach (var same in Of(what).Load().Brackets.SelectMany(b => b.Cases).GroupBy(c => c.Code))
        {
            bool person = same.Key == "leant_on" || ((string[])["pulled", "child", "door"]).Any(w => same.Key.StartsWith(w, StringComparison.Ordinal));
            var (duration, cov) = same.Key switch
            {
                _ when person => (LoadDuration.Instantaneous, 0.35),
                "loaded" => (what == "coat_rack" ? LoadDuration.MediumTerm : LoadDuration.LongTerm, 0.25),
                "wet_towels" => (LoadDuration.MediumTerm, 0.25),
                "line_down" or "line_out" => (LoadDuration.ShortTerm, 0.25),
                _ => (LoadDuration.Permanent, 0),
            };
            Assert.All(same, c => Assert.Equal((c.Code, duration, cov), (c.Code, c.Duration, c.VariableCov)));
            Assert.Equal(cov == 0, same.All(c => c.Variable == default));
        }
    }

    [Theory]
    [InlineData(25, false), InlineData(25.01, true)]
    public void More_than_25_kg_is_for_two(double kg, bool said) => Assert.Equal(said, Of("hook", ("hang_kg", kg)).Load().Warns("two_people"));

    [Fact]
    public void Classes_and_what_is_said_with_them()
    {
        var blind = Of("roller_blind");
        Assert.Equal(ConsequenceClass.Hurts, blind.Load().Class);
        Assert.Equal(ConsequenceClass.Overhead, blind.Load(Ceiling).Class);
        Assert.True(blind.Load(Ceiling).Warns("overhead"));
        Assert.False(blind.Load().Warns("overhead"));
        // Up into a recess it is no more overhead than on the face.
        var recess = blind.Words(("mount", "recess"));
        Assert.Equal(ConsequenceClass.Hurts, recess.Load().Class);
        Assert.True(recess.Load().Warns("recess_edge"));
        Assert.False(recess.Load(Ceiling).Warns("recess_edge"));
        var bed = (blind with { OverBed = true }).Load();
        Assert.Equal(ConsequenceClass.Overhead, bed.Class);
        Assert.True(bed.Warns("over_bed"));
        Assert.False(blind.Load().Warns("over_bed"));
        Assert.Equal(ConsequenceClass.Overhead, (Of("cabinet") with { OverBed = true }).Load().Class);
        Assert.Equal(ConsequenceClass.HoldsPerson, Of("free").Words(("class", "holds_person")).Load(Ceiling).Class);
    }

    [Fact]
    public void Licensed_trades_have_no_brackets()
    {
        var boiler = FixtureLoads.Of(new() { Id = "b", Wall = "w", What = "boiler", Numbers = new Dictionary<string, double> { ["mass_kg"] = 40 } }, FixtureSamples.Wall, new());
        Assert.Empty(boiler.Brackets);
        Assert.Equal(40, boiler.MassKg);
        Assert.Equal("licensed_trade", Assert.Single(boiler.Cautions).Code);
        Assert.Throws<ArgumentException>(() => FixtureLoads.Of(new() { Id = "b", Wall = "w", What = "nothing" }, FixtureSamples.Wall, new()));
    }

    // EN 1990:2002 (6.10): 1.35 G + 1.5 Q, 0.9 G where it helps (Table A1.2(A)); allowable stress design D + L, 0.6 D (ASCE 7-16 2.4.1, from memory).
    [Theory]
    [InlineData("eurocode", 1.35, 0.9, 1.5), InlineData("us", 1, 0.6, 1)]
    public void Combination_by_hand(string set, double heavy, double light, double variable)
    {
        var settings = new Settings { Standards = set };
        foreach (var (g, q, helps) in ((Wrench, Wrench, bool)[])
        [
            (new(10, 0, 0, 0, 0, 0), new(5, 0, 0, 0, 0, 0), false),
            (new(10, 0, 0, 0, 0, 0), new(-5, 0, 0, 0, 0, 0), true),
            (new(0, 0, 0, 4, -10, 0), new(0, 0, 0, -2, 1, 0), true),
            (new(0, 0, 0, 4, -10, 0), new(0, 0, 0, 2, 1, 0), true),
            (new(0, 0, 0, 4, -10, 0), new(0, 0, 0, 3, 1, 0), false),
            // Moments count by their lever of 100 mm: 5000 x 3000 / 100^2 = 1500 against 100.
            (new(0, 0, 5000, 0, -10, 0), new(0, 0, -3000, 0, -10, 0), true),
            (new(0, 0, 500, 0, -10, 0), new(0, 0, -300, 0, -10, 0), false),
            (new(0, 5000, 0, 0, -10, 0), new(0, -3000, 0, 0, -10, 0), true),
            (new(0, 0, 0, 0, -10, 5000), new(0, 0, 0, 0, -10, -3000), true),
            (new(0, 0, 0, 0, -10, -5000), new(0, 0, 0, 0, -10, -3000), false),
            // What is only rounding helps nothing.
            (new(10, 0, 0, 0, 0, 0), new(-1e-6, 0, 0, 0, 0, 0), false),
            (new(10, 0, 0, 0, 0, 0), new(0, 0, 0, 0, 0, 0), false),
        ])
            Same((helps ? light : heavy) * g + variable * q, Combination.Design(g, q, settings));
    }

    // Plates of 40 x 100 lie on one another where the brackets are less than 40 across and less than 100 up from each other; the first such pair is named, with its distance.
    [Theory]
    [InlineData(39, 0, 39.0), InlineData(-30, 40, 50.0), InlineData(0, 99, 99.0), InlineData(0.3, 0.4, 0.5)]
    [InlineData(41, 0, null), InlineData(0, -101, null), InlineData(-41, 99, null), InlineData(39, 101, null)]
    public void Plates_that_lie_on_one_another(double x, double y, double? apart)
    {
        var rail = Of("towel_rail", ("bracket_width_mm", 40), ("bracket_height_mm", 100), ("holes", 2)).Placed((-200, 0), (0, 0), (x, y)).Load();
        var said = rail.Cautions.Where(c => c.Code == "caution_brackets_overlap").ToList();
        Assert.Equal(apart is null ? 0 : 1, said.Count);
        if (apart is { } mm) Assert.Equal((2, 3, mm), (said[0].Values[0].Number, said[0].Values[1].Number, Math.Round(said[0].Values[2].Number, 9)));
    }
}
