using Pattress.Brackets;

namespace Pattress.Tests.Brackets;

/// <summary>Odd corners of brackets by hand: what lifts off, slots and keyholes in line, rings within rings, fixings side by side, what is small beside rounding.</summary>
public sealed class BracketCornersTests
{
    private static (double X, double Y) Turn(double x, double y, int quarters) => quarters == 0 ? (x, y) : Turn(-y, x, quarters - 1);

    private static ContactStatus Status((double X, double Y)[] fixings, double n, double x, double y, int quarters, double[]? tensions = null)
    {
        FixingPoint[] points = [.. fixings.Select(f => Turn(f.X, f.Y, quarters)).Select(f => new FixingPoint(f.X, f.Y, 900))];
        var (px, py) = Turn(x, y, quarters);
        return ContactSolver.Solve(Plate.Rectangle(-50, 50, -50, 50), points, new Bed(2), new(n, n * px, n * py), tensions ?? new double[points.Length]).Status;
    }

    // Statics, in each of the four quarters: a plate of 100 x 100 and a fixing beyond its lower edge, 80 below the middle. Pressed at 60 below the middle it tips about the
    // edge at 50, and the fixing goes along into the wall: nothing holds it. Pressed inside the edge it stands. Pulled anywhere on the plate's side of the fixing both pull
    // and wall turn it the same way about the fixing: it tips off; pulled on the far side it pries on the plate.
    [Theory]
    [InlineData(0), InlineData(1), InlineData(2), InlineData(3)]
    public void A_fixing_beyond_the_edge(int quarters)
    {
        (double X, double Y)[] below = [(0, -80)];
        Assert.Equal(ContactStatus.Mechanism, Status(below, -100, 0, -60, quarters));
        Assert.Equal(ContactStatus.Balanced, Status(below, -100, 0, -45, quarters));
        Assert.Equal(ContactStatus.Mechanism, Status(below, 100, 0, -60, quarters));
        Assert.Equal(ContactStatus.Mechanism, Status(below, 100, 0, 0, quarters));
        Assert.Equal(ContactStatus.Mechanism, Status(below, 100, 20, -80, quarters));
        Assert.Equal(ContactStatus.Balanced, Status(below, 100, 0, -81, quarters));
        // Two beyond opposite edges hold a pull 3 mm beside their line: it tips the plate on the far edge, 50 away, and so draws at least 300 / 50 N more.
        var t = new double[2];
        Assert.Equal(ContactStatus.Balanced, Status([(0, -80), (0, 80)], 100, 3, 40, quarters, t));
        Assert.InRange(t.Sum(), 106, 115);
        // Three round the plate hold any pull within them, by their levers: at the middle of (-80, -80), (80, -80), (0, 160) each a third.
        t = new double[3];
        Assert.Equal(ContactStatus.Balanced, Status([(-80, -80), (80, -80), (0, 160)], 90, 0, 0, quarters, t));
        Assert.All(t, v => Assert.Equal(30, v, 1e-9));
        // On the edge itself it is no better: pulled at a millimetre within, the plate tips off; at one beyond, it pries.
        Assert.Equal(ContactStatus.Mechanism, Status([(0, -50)], 100, 0, -49, quarters));
        Assert.Equal(ContactStatus.Balanced, Status([(0, -50)], 100, 0, -51, quarters));
    }

    // A weight on two keyholes 200 mm apart, both slots upright: they carry nothing up, all across, by levers. 90 N to the right at 50 above the lower: 67.5 on it, 22.5 on the
    // upper. Anything up or down lifts it out. Turned by a quarter the same; off the origin the same.
    [Theory]
    [InlineData(0, 0), InlineData(1, 0), InlineData(0, 700), InlineData(3, 700)]
    public void Keyholes_in_line(int quarters, double off)
    {
        var f = new ShearForce[2];
        ShearPoint At(double y) => Turn(0, y, quarters) is var (px, py) ? new(px + off, py - off, 1.5, 90 + 90 * quarters) : default;
        ShearPoint[] points = [At(0), At(200)];
        var (fx, fy) = Turn(90, 0, quarters);
        var (x, y) = Turn(0, 50, quarters);
        Assert.True(ShearGroup.TrySolve(points, fx, fy, (x + off) * fy - (y - off) * fx, f));
        Assert.Equal((67.5, 22.5), (Math.Round(f[0].Size, 6), Math.Round(f[1].Size, 6)));
        Assert.Equal(fx, f[0].X + f[1].X, 1e-6);
        Assert.Equal(fy, f[0].Y + f[1].Y, 1e-6);
        var (ux, uy) = Turn(0, -5, quarters);
        Assert.False(ShearGroup.TrySolve(points, fx + ux, fy + uy, (x + off) * (fy + uy) - (y - off) * (fx + ux), f));
    }

    // Two slots along x, side by side: nothing across them, levers up: 100 N down at 30 of 120 mm: 75 and 25.
    [Fact]
    public void Slots_side_by_side()
    {
        var f = new ShearForce[2];
        Assert.True(ShearGroup.TrySolve([new(-60, 10, 1, 0), new(60, 10, 1, 0)], 0, -100, -100 * -30, f));
        Assert.Equal((-75, -25), (Math.Round(f[0].Y, 6), Math.Round(f[1].Y, 6)));
        Assert.False(ShearGroup.TrySolve([new(-60, 10, 1, 0), new(60, 10, 1, 0)], 1, -100, 3000, f));
    }

    // Slots that are a thousandth of a degree off the same direction hold nothing along it in any workshop: refused. A degree apart, 100 N along the first: the two others press
    // across themselves alone, so 100 / sin 1° in all.
    [Theory]
    [InlineData(0), InlineData(40), InlineData(90), InlineData(135)]
    public void Slots_nearly_in_one_direction(double degrees)
    {
        var f = new ShearForce[3];
        double a = degrees * Math.PI / 180, c = 100 * Math.Cos(a), s = 100 * Math.Sin(a);
        static ShearPoint At(double along, double a, double slot) => new(along * Math.Cos(a), along * Math.Sin(a), 1, slot);
        Assert.False(ShearGroup.TrySolve([At(-50, a, degrees), At(50, a, degrees + 0.001)], c, s, 0, f));
        Assert.True(ShearGroup.TrySolve([At(-50, a, degrees), At(50, a, degrees + 1), At(0, a, degrees + 1)], c, s, 0, f));
        Assert.Equal(c, f.Sum(v => v.X), 1e-6);
        Assert.Equal(s, f.Sum(v => v.Y), 1e-6);
        Assert.Equal(100 / Math.Sin(Math.PI / 180), new ShearForce(f[1].X + f[2].X, f[1].Y + f[2].Y).Size, 1e-5);
    }

    // What is added is added: five times one spring, by two roads.
    [Fact]
    public void Sums_of_stiffness()
    {
        var (one, five, sum) = (new Stiffness3(), new Stiffness3(), new Stiffness3());
        one.AddSpring(3, 2, 7);
        five.AddSpring(15, 2, 7);
        sum.AddSpring(3, 2, 7);
        sum.Add(4, one);
        Assert.Equal((five.AA, five.AB, five.AC, five.BB, five.BC, five.CC), (sum.AA, sum.AB, sum.AC, sum.BB, sum.BC, sum.CC));
        // By hand: 15, 30, 105, 60, 210, 735.
        Assert.Equal((15, 30, 105, 60, 210, 735), (sum.AA, sum.AB, sum.AC, sum.BB, sum.BC, sum.CC));
        var moments = new Stiffness3();
        moments.Add(2, new Moments { A = 1, X = 2, Y = 3, XX = 4, XY = 5, YY = 6 });
        Assert.Equal((2, 4, 6, 8, 10, 12), (moments.AA, moments.AB, moments.AC, moments.BB, moments.BC, moments.CC));
    }

    private const string Square = """ "outline_mm":[[0,0],[100,0],[100,100],[0,100]],"bed_n_per_mm3":2 """, Middle = """ "fixings":[{"x_mm":50,"y_mm":50,"stiffness_n_per_mm":900}] """;

    private static Outcome<BracketReport> Answer(string rest) => BracketDocument.Answer($$"""{{{Square}},{{rest}}}""");

    // 880 N pressed on at the middle of 10,000 mm² less two slots of 400 and 800 mm² on either side of it, at distances as 2 to 1: evenly 0.1 MPa on 8,800.
    [Fact]
    public void Two_slots_in_a_plate()
    {
        const string slots = """ "holes_mm":[[[0.5,40],[20.5,40],[20.5,60],[0.5,60]],[[60,30],[80,30],[80,70],[60,70]]] """;
        // Middles at 10.5 and 70: 400 x (50 - 10.5) = 15,800 against 800 x 20 = 16,000: so the second stands at 69.75.
        string balanced = slots.Replace("[60,30],[80,30],[80,70],[60,70]", "[59.75,30],[79.75,30],[79.75,70],[59.75,70]", StringComparison.Ordinal);
        var a = Answer($$"""{{balanced}},{{Middle}},"load":{"n_n":-880,"mx_nmm":-44000,"my_nmm":-44000}""");
        Assert.Empty(a.Problems);
        Assert.Equal(0.1, a.Value!.Contact.PressureMax, 1e-9);
        Assert.Equal(8800, a.Value.Contact.Area, 1e-6);
        Assert.Equal(0, a.Value.Fixings[0].Tension, 1e-9);
    }

    // A ring in a ring: a hole wholly within another, an outline wholly within another, either way round; rings that share an edge touch. Apart is apart.
    [Theory]
    [InlineData("""[[20,20],[80,20],[80,80],[20,80]],[[40,40],[60,40],[60,60],[40,60]]""", true)]
    [InlineData("""[[40,40],[60,40],[60,60],[40,60]],[[20,20],[80,20],[80,80],[20,80]]""", true)]
    [InlineData("""[[20,20],[40,20],[40,40],[20,40]],[[40,20],[60,20],[60,40],[40,40]]""", true)]
    [InlineData("""[[20,20],[40,20],[40,40],[20,40]],[[10,25],[50,25],[50,30],[10,30]]""", true)]
    [InlineData("""[[20,20],[40,20],[40,40],[20,40]],[[41,20],[60,20],[60,40],[41,40]]""", false)]
    [InlineData("""[[20,20],[40,20],[40,40],[20,40]],[[20,41],[40,41],[40,60],[20,60]],[[60,20],[80,20],[80,40],[60,40]]""", false)]
    [InlineData("""[[60,20],[80,20],[80,40],[60,40]],[[20,41],[40,41],[40,60],[20,60]],[[20,20],[40,20],[40,42],[20,42]]""", true)]
    public void Rings_within_rings(string holes, bool overlap)
    {
        const string load = """ "load":{"n_n":10} """;
        var found = Answer($$""" "holes_mm":[{{holes}}],"fixings":[{"x_mm":90,"y_mm":90}],{{load}} """).Problems.Select(p => p.Code);
        Assert.Equal(overlap ? ["holes_overlap"] : [], found);
        string first = $"[{holes.Split("]],")[0]}{(holes.Contains("]],") ? "]]" : "")}]"[1..^1];
        string outer = $$"""{"outline_mm":{{first}},"further_outlines_mm":[{{holes[(first.Length + 1)..]}}],"bed_n_per_mm3":2,"fixings":[],"load":{} }""";
        Assert.Equal(overlap ? ["outlines_overlap"] : [], BracketDocument.Answer(outer).Problems.Select(p => p.Code));
    }

    // Four fixings in a square, said in any order, are four; a range may be of no width, and must hold the value that is said with it, its ends too.
    [Fact]
    public void Fixings_in_any_order()
    {
        int[][] at = [[20, 20], [80, 20], [20, 80], [80, 80]];
        foreach (int[] order in (int[][])[[0, 1, 2, 3], [3, 2, 1, 0], [1, 0, 3, 2], [2, 3, 0, 1]])
        {
            string fixings = string.Join(',', order.Select(i => $$"""{"x_mm":{{at[i][0]}},"y_mm":{{at[i][1]}},"stiffness_n_per_mm":700}"""));
            var a = Answer($$""" "fixings":[{{fixings}}],"load":{"n_n":100,"mx_nmm":5000,"my_nmm":5000} """);
            Assert.Empty(a.Problems);
            Assert.All(a.Value!.Fixings, f => Assert.Equal(25, f.Tension, 1e-9));
            Assert.Empty(a.Value.Cautions);
        }

        string Range(string range, string more = "") => $$""" "fixings":[{"x_mm":50,"y_mm":50,"stiffness_range_n_per_mm":[{{range}}]{{more}}}],"load":{"n_n":10,"mx_nmm":500,"my_nmm":500} """;
        Assert.Equal(10, Answer(Range("800,800")).Value!.Fixings[0].TensionWorst!.Value, 1e-9);
        Assert.True(Answer(Range("400,800", ""","stiffness_n_per_mm":400""")).Ok);
        Assert.True(Answer(Range("400,800", ""","stiffness_n_per_mm":800""")).Ok);
        Assert.Equal("value_outside_range", Answer(Range("400,800", ""","stiffness_n_per_mm":399""")).Problems[0].Code);
        Assert.Equal("value_outside_range", Answer(Range("400,800", ""","stiffness_n_per_mm":801""")).Problems[0].Code);
        Assert.Equal("range_reversed", Answer(Range("800,400")).Problems[0].Code);
    }

    // A plate of 100 x 100 has a size of 50: fixings nearer than half a millimetre have no lever between them, and the answer says which.
    [Theory]
    [InlineData(0.4, 0.3, true), InlineData(-0.4, 0.1, true), InlineData(0.1, -0.4, true), InlineData(0.6, 0, false), InlineData(0, -0.6, false), InlineData(-0.6, 0.1, false)]
    public void Fixings_a_hairs_breadth_apart(double dx, double dy, bool near)
    {
        var a = Answer(FormattableString.Invariant($$""" "fixings":[{"x_mm":20,"y_mm":20},{"x_mm":50,"y_mm":50},{"x_mm":{{50 + dx}},"y_mm":{{50 + dy}}}],"load":{"n_n":10,"tz_nmm":500} """)).Value!;
        var said = a.Cautions.Where(c => c.Code == "fixings_nearly_coincide").ToList();
        Assert.Equal(near ? 1 : 0, said.Count);
        if (near) Assert.Equal((2, 3, 0.5), (said[0].Values[0].Number, said[0].Values[1].Number, Math.Round(said[0].Values[2].Number, 9)));
    }

    // No load: an answer of nothing but noughts, whatever stood in the span before.
    [Fact]
    public void No_load_is_all_noughts()
    {
        double[] t = [1, 2];
        Assert.Equal(new ContactAnswer(ContactStatus.Balanced, 0, 0, 0, 0, 0, 0, 0, 0), ContactSolver.Solve(Plate.Rectangle(0, 10, 0, 10), [new(5, 5, 100), new(6, 5, 100)], new Bed(1), default, t));
        Assert.Equal([0, 0], t);
    }

    // Instantaneous centre: the group's strength does not hang on the units of length: everything ten times as large but the slip curve, whose lengths grow too, carries as much.
    // And for two fixings and a load very far off, a couple P e = R s at the last slip: C tends to s / e times the share there.
    [Fact]
    public void Instantaneous_centre_far_off_and_in_other_units()
    {
        Corner[] fixings = [new(0, 0), new(0, 76.2), new(60, 10)], large = [.. fixings.Select(f => new Corner(10 * f.X, 10 * f.Y))];
        var other = new SlipCurve(SlipCurve.Aisc.Rate / 10, SlipCurve.Aisc.Power, SlipCurve.Aisc.LastSlip * 10);
        Assert.Equal(
            InstantaneousCentre.Coefficient(fixings, new(160, 30), -90, SlipCurve.Aisc)!.Value,
            InstantaneousCentre.Coefficient(large, new(1600, 300), -90, other)!.Value, 1e-7);
        double share = Math.Pow(1 - Math.Exp(-3.4), 0.55), far = InstantaneousCentre.Coefficient([new(0, 0), new(0, 100)], new(20_000, 50), -90, SlipCurve.Aisc)!.Value;
        Assert.Equal(share * 100 / 20_000, far, 2e-4 * far);
        // A single fixing carries a force through it, its share at the last slip.
        Assert.Equal(share, InstantaneousCentre.Coefficient([new(30, 40)], new(30, 40), 25, SlipCurve.Aisc)!.Value, 1e-6);
    }

    // What encloses nothing is no plate: a line, a point, no ring at all, a hole as large as the plate.
    [Fact]
    public void Plates_of_nothing()
    {
        Corner[] square = [new(0, 0), new(10, 0), new(10, 10), new(0, 10)], line = [new(0, 0), new(5, 5), new(10, 10)];
        Assert.Throws<ArgumentException>(() => Plate.Of(line));
        Assert.Throws<ArgumentException>(() => Plate.Of([square, line], []));
        Assert.Throws<ArgumentException>(() => Plate.Of([], []));
        Assert.Throws<ArgumentException>(() => Plate.Of([square], [square]));
        Assert.Equal(100, Plate.Of([.. square.Reverse()]).Area, 1e-12);
    }

    // Nine alike in a row, each bearing as its place says (elastic vector method by hand): 90 N down at 400 mm to the right of the middle of nine at 100 mm pitch: 10 each and
    // 36,000 Nmm over sum r² = 2 (100² + 200² + 300² + 400²) = 600,000: 0.06 N a mm, so 24 N more on the last, 24 less on the first. Wherever the axes lie.
    [Theory]
    [InlineData(0, 0), InlineData(5000, -3000), InlineData(-0.3, 0.2)]
    public void Nine_in_a_row(double ox, double oy)
    {
        var f = new ShearForce[9];
        Assert.True(ShearGroup.TrySolve([.. Enumerable.Range(-4, 9).Select(i => new ShearPoint(ox + 100 * i, oy, 3))], 0, -90, -90 * (ox + 400), f));
        for (int i = 0; i < 9; i++)
        {
            Assert.Equal(-10 - 0.06 * 100 * (i - 4), f[i].Y, 1e-7);
            Assert.Equal(0, f[i].X, 1e-7);
        }
    }
}
