using Pattress.Brackets;

namespace Pattress.Tests.Brackets;

/// <summary>Parts of the brackets' documents, shear with play, beds and nets by hand.</summary>
public sealed class BracketsByHandTests
{
    // Points (10, 20) and (70, 100): 60 and 80 apart, 100 in all. 30 N right, 40 N down, 5000 Nmm: the twist about the first is 5000 + 10 x 40 + 20 x 30 =
    // 6000 Nmm, a couple of 60 N, 0.6 N a mm: 30 + 0.6 x 80 = 78 and -40 - 0.6 x 60 = -76 on it, 108.9 N; about the second 5000 + 70 x 40 + 100 x 30 = 10,800,
    // 1.08 a mm: 30 - 1.08 x 80 = -56.4 and -40 + 1.08 x 60 = 24.8, 61.6 N, so the couple of 108 N it is.
    [Fact]
    public void Play_between_two_points()
    {
        ShearPoint[] points = [new(10, 20), new(70, 100)];
        Assert.Equal(Math.Sqrt(78 * 78 + 76 * 76), ShearGroup.WithPlay(points, 0, 30, -40, 5000), 1e-9);
        Assert.Equal(108, ShearGroup.WithPlay(points, 1, 30, -40, 5000), 1e-9);
        // A partner in the same place steadies nothing; alone it takes the shear as it is.
        Assert.Equal(50, ShearGroup.WithPlay([new(10, 20), new(10, 20)], 0, 30, -40, 5000), 1e-9);
    }

    [Theory]
    [InlineData(0, 0, 0, true), InlineData(1, 0, 0, false), InlineData(0, 1, 0, false), InlineData(0, 0, 1, false)]
    public void No_fixing_carries_no_shear(double vx, double vy, double tz, bool held) => Assert.Equal(held, ShearGroup.TrySolve([], vx, vy, tz, []));

    // Elastic method (AISC Manual Part 7) by hand, the group off the origin: three of stiffness 1 at (100, 0), (100, 60), (180, 0): centre (126.667, 20);
    // polar sum 2 (26.667² ) + 53.333² + 2 (20²) + 40² = 6666.667. 90 N down at the origin: twist about the centre 90 x 126.667 = 11,400 Nmm, 1.71 N a mm.
    [Fact]
    public void Group_off_the_origin()
    {
        var f = new ShearForce[3];
        Assert.True(ShearGroup.TrySolve([new(100, 0), new(100, 60), new(180, 0)], 0, -90, 0, f));
        double turn = 90 * (380 / 3.0) / (2 * Sq(80 / 3.0) + Sq(160 / 3.0) + 2 * 400 + 1600);
        (double X, double Y)[] from = [(-80 / 3.0, -20), (-80 / 3.0, 40), (160 / 3.0, -20)];
        for (int i = 0; i < 3; i++)
        {
            Assert.Equal(-turn * from[i].Y, f[i].X, 1e-9);
            Assert.Equal(-30 + turn * from[i].X, f[i].Y, 1e-9);
        }
    }

    private static double Sq(double v) => v * v;

    // Gypsum of 12.5 mm over 600 mm, by hand: D soft 2000 x 1953.125 / 11.52 = 339,084.2, stiff 3000: 508,626.3 Nmm. 4000 mm2 of plate 100 to 300 mm from the support:
    // the strip sinks by the series (L-STRIP-W: 0.016961 in the middle); crushing 12.5 / 100 and 12.5 / 1000.
    [Fact]
    public void Bed_under_a_plate_by_hand()
    {
        var board = BoardGive.Gypsum(12.5, 600);
        double Series(double place) => Enumerable.Range(1, 4000).Sum(m => Math.Pow(Math.Sin(m * Math.PI * place), 2) / Math.Pow(m, 3)) / (2 * Math.Pow(Math.PI, 3));
        double soft = 2000 * 1953.125 / 11.52, stiff = 3000 * 1953.125 / 11.52;
        var range = BoardUnderPlate.Modulus(board, 4000, 100, 300);
        Assert.Equal(1 / (4000 * Series(0.5) * 360_000 / soft + 0.125), range.Low, 1e-5 * range.Low);
        Assert.Equal(1 / (4000 * Series(1 / 6.0) * 360_000 / stiff + 0.0125), range.High, 1e-5 * range.High);
        // The two distances in either order; beyond the middle it is the middle.
        Assert.Equal(range, BoardUnderPlate.Modulus(board, 4000, 300, 100));
        Assert.Equal(range.Low, BoardUnderPlate.Modulus(board, 4000, 100, 500).Low);
        // On foam of 0.02 to 0.2 N/mm3: 1 / (8 sqrt(k D)).
        var foam = BoardUnderPlate.OnFoam(board, 4000, 0.02, 0.2);
        Assert.Equal(1 / (4000 / (8 * Math.Sqrt(0.02 * soft)) + 0.125), foam.Low, 1e-12);
        Assert.Equal(1 / (4000 / (8 * Math.Sqrt(0.2 * stiff)) + 0.0125), foam.High, 1e-12);
        // Beside a fixing: Roark Table 11.2, an edge free to turn and one held.
        var beside = BoardUnderPlate.BesideFixing(board, 600, 40, 60);
        Assert.Equal(1 / (600 * 3600 * 3.2 / (16 * Math.PI * soft * 1.2) + 0.125), beside.Low, 1e-12);
        Assert.Equal(1 / (600 * 1600 / (16 * Math.PI * stiff) + 0.0125), beside.High, 1e-12);
    }

    // 1.3 up to 1 mm and where nothing is known, 1 from 4 mm, straight between: 1.2 at 2 mm, 1.1 at 3 mm (assumed).
    [Theory]
    [InlineData(null, 1.3), InlineData(0.5, 1.3), InlineData(1.0, 1.3), InlineData(2.0, 1.2), InlineData(3.0, 1.1), InlineData(4.0, 1.0), InlineData(9.0, 1.0)]
    public void Prying_by_hand(double? thickness, double factor) => Assert.Equal(factor, Prying.Factor(thickness), 1e-12);

    private const string Square = """ "outline_mm":[[-50,-50],[50,-50],[50,50],[-50,50]] """;

    private static BracketReport Report(string rest) => BracketDocument.Answer($$"""{{{Square}},{{rest}}}""") is { Ok: true, Value: { } v } ? v : throw new InvalidOperationException(BracketDocument.Answer($$"""{{{Square}},{{rest}}}""").Problems[0].ToString());

    // What is not said is taken in the middle of its range on a logarithmic scale: sqrt(200 x 5000) = 1000 N/mm, sqrt(0.5 x 10) = sqrt 5 N/mm3; and said so.
    [Fact]
    public void Stiffness_in_the_middle_of_its_range()
    {
        const string rest = """ "load":{"n_n":100,"my_nmm":4000} """;
        var open = Report($$""" "fixings":[{"x_mm":0,"y_mm":10}],{{rest}} """);
        var said = Report($$""" "fixings":[{"x_mm":0,"y_mm":10,"stiffness_n_per_mm":1000}],"bed_n_per_mm3":2.23606797749979,{{rest}} """);
        Assert.Equal(said.Fixings[0].Tension, open.Fixings[0].Tension, 1e-9);
        Assert.Equal(said.Contact.PressureMax, open.Contact.PressureMax, 1e-9);
        Assert.Null(said.Fixings[0].TensionWorst);
        Assert.NotNull(open.Fixings[0].TensionWorst);
        string[] Codes(BracketReport r) => [.. r.Assumed.Select(a => a.Code)];
        Assert.Equal(["friction_ignored", "plate_taken_rigid", "fixing_stiffness_assumed", "bed_stiffness_assumed"], Codes(open));
        Assert.Equal(["friction_ignored", "plate_taken_rigid"], Codes(said));
        var ranged = Report($$""" "fixings":[{"x_mm":0,"y_mm":10,"stiffness_range_n_per_mm":[500,2000]},{"x_mm":20,"y_mm":0,"stiffness_n_per_mm":700}],"bed_range_n_per_mm3":[1,4],"plate_thickness_mm":2,{{rest}} """);
        Assert.Equal(["friction_ignored", "plate_taken_rigid", "prying_assumed"], Codes(ranged));
        // A range alone: sqrt(500 x 2000) = 1000 N/mm and sqrt(1 x 4) = 2 N/mm3. Prying 1.2 on the worst.
        var middle = Report($$""" "fixings":[{"x_mm":0,"y_mm":10,"stiffness_n_per_mm":1000},{"x_mm":20,"y_mm":0,"stiffness_n_per_mm":700}],"bed_n_per_mm3":2,{{rest}} """);
        Assert.Equal(middle.Fixings[0].Tension, ranged.Fixings[0].Tension, 1e-9);
        Assert.Equal(1.2 * ranged.Fixings[0].TensionWorst!.Value, ranged.Fixings[0].TensionWithPrying!.Value, 1e-9);
    }

    // With play one of two fixings 40 mm apart may get all 100 N.
    [Fact]
    public void Play_stands_in_the_document()
    {
        const string two = """ "fixings":[{"x_mm":-20,"y_mm":0,"stiffness_n_per_mm":900},{"x_mm":20,"y_mm":0,"stiffness_n_per_mm":900}],"bed_n_per_mm3":2,"load":{"n_n":10,"vy_n":-100,"vx_n":30} """;
        using var json = System.Text.Json.JsonDocument.Parse(BracketDocument.Json(Report(two + ""","play":"yes" """)));
        var first = json.RootElement.GetProperty("fixings")[0];
        Assert.Equal(Math.Sqrt(10_900), first.GetProperty("shear_with_play_n").GetDouble(), 1e-9);
        Assert.Equal(15, first.GetProperty("shear_x_n").GetDouble(), 1e-9);
        Assert.Equal(-50, first.GetProperty("shear_y_n").GetDouble(), 1e-9);
        Assert.Null(Report(two).Fixings[0].ShearWithPlay);
    }

    // Fixings are told apart from a millionth of a millimetre on, and counted from 1; one outside the outline is named by its number.
    [Fact]
    public void Fixings_by_number()
    {
        var same = BracketDocument.Answer($$"""{{{Square}},"fixings":[{"x_mm":0,"y_mm":10},{"x_mm":5,"y_mm":10},{"x_mm":5,"y_mm":10}],"load":{"n_n":10} }""");
        Assert.Contains(same.Problems, p => p is { Code: "fixings_in_one_place", Path: "$.fixings[2]", Value: "fixings 2 and 3" });
        Assert.Single(same.Problems);
        Assert.True(BracketDocument.Answer($$"""{{{Square}},"fixings":[{"x_mm":0,"y_mm":10},{"x_mm":0.00001,"y_mm":10},{"x_mm":0,"y_mm":10.00001}],"load":{"n_n":10} }""").Ok);
        var outside = BracketDocument.Answer($$"""{{{Square}},"fixings":[{"x_mm":0,"y_mm":10},{"x_mm":0,"y_mm":70}],"load":{"n_n":10} }""");
        Assert.Equal(2, Assert.Single(outside.Value!.Cautions, c => c.Code == "fixing_outside_outline").Values[0].Number);
        // A ring of a square millimetre is one; of less it is none. Closed by hand, its last corner counts once.
        Assert.True(BracketDocument.Answer("""{"outline_mm":[[-0.5,-0.5],[0.5,-0.5],[0.5,0.5],[-0.5,0.5],[-0.5,-0.5]],"fixings":[],"load":{"n_n":-10}}""").Ok);
        Assert.False(BracketDocument.Answer("""{"outline_mm":[[-0.5,-0.5],[0.5,-0.5],[0.5,0.499],[-0.5,0.499]],"fixings":[],"load":{"n_n":-10}}""").Ok);
        Assert.False(BracketDocument.Answer("""{"outline_mm":[[0,0],[10,0],[0,0]],"fixings":[],"load":{"n_n":-10}}""").Ok);
    }

    // Twelve fixings with ranges are more than every corner: said as searched.
    [Fact]
    public void Searching_is_said()
    {
        string fixings = string.Join(',', Enumerable.Range(0, 11).Select(i => FormattableString.Invariant($$"""{"x_mm":{{-40 + 8 * i}},"y_mm":{{i % 3 * 20 - 20}}}""")));
        Assert.Contains(Report($$""" "fixings":[{{fixings}}],"load":{"n_n":50} """).Cautions, c => c.Code == "stiffness_worst_case_searched");
        Assert.Empty(Report(""" "fixings":[{"x_mm":0,"y_mm":0}],"load":{"n_n":50} """).Cautions);
    }

    /// <summary>What is out of balance by more than 1e-9 is no answer, whoever says so.</summary>
    [Fact]
    public void An_unbalanced_answer_is_none()
    {
        var plate = Plate.Rectangle(-50, 50, -50, 50);
        FixingPoint[] fixings = [new(0, 10, 900)];
        var raw = ContactScale.AboutCentre(plate, new(100, 0, 2000));
        var scale = ContactScale.Of(plate, fixings, new Bed(2), raw);
        var energy = scale.Energy(plate, [scale.Of(fixings[0])], new Bed(2), raw, new double[plate.X.Length]);
        var far = new Triple(3, 1, -2);
        energy.Evaluate(far);
        Assert.Equal(ContactStatus.NotSolved, scale.Answer(ref energy, default, far, ContactStatus.Balanced, new double[1]).Status);
        Assert.Equal(ContactStatus.Mechanism, scale.Answer(ref energy, default, far, ContactStatus.Mechanism, new double[1]).Status);
    }

    // Statics: a plate on one fixing whose pull is capped at 40 N and 30 mm above its lower edge carries no pull above it of 40 N through it; a wall that crushes at
    // 0.01 MPa under 10,000 mm2 carries 100 N pressed on in the middle, and no more.
    [Theory]
    [InlineData(39.9, ContactStatus.Balanced), InlineData(40.1, ContactStatus.Overloaded)]
    public void Plastic_limit_of_a_fixing(double pull, ContactStatus expected) =>
        Assert.Equal(expected, ContactSolver.Solve(Plate.Rectangle(-50, 50, -50, 50), [new(0, 0, 900, TensionCap: 40)], new Bed(2), new(pull, 0, 0), new double[1]).Status);

    [Theory]
    [InlineData(99, ContactStatus.Balanced), InlineData(101, ContactStatus.Overloaded)]
    public void Plastic_limit_of_the_wall(double press, ContactStatus expected) =>
        Assert.Equal(expected, ContactSolver.Solve(Plate.Rectangle(-50, 50, -50, 50), [], new Bed(2, 0.01), new(-press, 0, 0), []).Status);

    // Where each fixing is alone held by hand: a plate lifted clear hangs on its fixings only, by levers: 300 N at x = 10 between x = -40 and 40.
    [Fact]
    public void Lifted_clear()
    {
        var t = new double[2];
        var a = ContactSolver.Solve(Plate.Rectangle(-50, 50, -5, 5), [new(-40, 0, 900), new(40, 0, 900)], new Bed(1e-4), new(300, 3000, 0), t);
        Assert.Equal(300 * 30 / 80.0, t[0], 0.05);
        Assert.Equal(300 * 50 / 80.0, t[1], 0.05);
        Assert.Equal(t[0] + t[1], 300 + a.Contact, 1e-6);
    }
}
