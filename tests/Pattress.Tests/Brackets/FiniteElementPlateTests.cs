using System.Globalization;
using System.Text;
using Pattress.Brackets;
using Pattress.Tests.Published;
using Pattress.Tests.References;

namespace Pattress.Tests.Brackets;

/// <summary>
/// Fourteen plates, a two-lobed and a slotted one among them, against a general finite-element program (Debian's calculix-ccx): a rigid body on a grid of springs that press
/// only, fixings as springs that pull only. Forces within 1 %, pressures within 3 % (the grid has 2,000 cells). The springs keep a hundred-thousandth of
/// their stiffness the other way, since the program needs a slope there.
/// </summary>
public class FiniteElementPlateTests
{
    private const int Across = 40, Up = 50;
    private const double Ground = -1000, Slack = 1e-5;

    /// <param name="Shape">Outlines and holes within W by H, whose edges run along the grid; empty for the whole rectangle.</param>
    private sealed record Case(double W, double H, FixingPoint[] Fixings, double Bed, BracketLoad Load, params double[][] Shape)
    {
        internal bool Holds(double x, double y) => Shape.Length == 0 || (Outer.Any(r => In(r, x, y)) && !Holes.Any(r => In(r, x, y)));

        internal Plate Plate => Shape.Length == 0 ? Plate.Rectangle(-W / 2, W / 2, -H / 2, H / 2) : Plate.Of([.. Outer.Select(Ring)], [.. Holes.Select(Ring)]);

        // Five numbers are a hole, four an outline: left, right, bottom, top.
        private IEnumerable<double[]> Outer => Shape.Where(r => r.Length == 4);

        private IEnumerable<double[]> Holes => Shape.Where(r => r.Length == 5);

        private static bool In(double[] r, double x, double y) => x > r[0] && x < r[1] && y > r[2] && y < r[3];

        private static Corner[] Ring(double[] r) => [new(r[0], r[2]), new(r[1], r[2]), new(r[1], r[3]), new(r[0], r[3])];
    }

    private static readonly Case[] Cases =
    [
        new(60, 100, [new(-20, 30, 800), new(20, 30, 800)], 2, new(0, 0, 9000)),
        new(80, 100, [new(-30, -40, 600), new(30, -40, 600), new(-30, 40, 600), new(30, 40, 600)], 1.5, new(150, 2500, 7000)),
        new(50, 80, [new(-12, 28, 900), new(14, -26, 400)], 3, new(60, -1800, 4200)),
        new(50, 80, [new(0, 25, 1500)], 2, new(0, 0, 6000)),
        new(50, 80, [new(0, 25, 1500)], 2, new(100, 0, 2000)),
        new(120, 40, [new(-45, 0, 700), new(45, 0, 700)], 4, new(50, 4000, 1500)),
        new(100, 100, [new(-35, -35, 500), new(35, -35, 500), new(0, 38, 2000)], 1, new(0, 9000, 9000)),
        new(70, 150, [new(0, 60, 3000), new(0, 0, 1000), new(0, -60, 3000)], 5, new(-40, 0, 25000)),
        new(70, 150, [new(0, 60, 3000), new(0, 0, 1000), new(0, -60, 3000)], 0.5, new(80, 1000, -20000)),
        new(40, 40, [new(10, 10, 800)], 8, new(90, 1200, 300)),
        new(200, 60, [new(-80, 15, 400), new(-20, 15, 400), new(40, 15, 400), new(85, -15, 400)], 2, new(120, -8000, 3000)),
        new(90, 90, [new(-30, 30, 5000), new(30, 30, 200)], 2, new(-100, 0, 9000)),
        new(80, 100, [new(-20, 30, 900), new(20, 30, 500), new(0, -30, 700)], 2, new(50, 1500, 7000), [-40, 40, -50, -10], [-10, 10, -10, 10], [-40, 40, 10, 50]),
        new(80, 100, [new(-30, 30, 800), new(30, -30, 800)], 3, new(80, -2000, 6000), [-40, 40, -50, 50], [-10, 10, -40, 20, 0]),
    ];

    public static TheoryData<int> Numbers => [.. Enumerable.Range(0, Cases.Length)];

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Plate_agrees_with_finite_elements(int number)
    {
        var c = Cases[number];
        var tensions = new double[c.Fixings.Length];
        var answer = ContactSolver.Solve(c.Plate, c.Fixings, new Bed(c.Bed), c.Load, tensions);
        Assert.Equal(ContactStatus.Balanced, answer.Status);
        var forces = FiniteElements.GroundForces(Deck(c));
        double cell = c.W / Across * (c.H / Up), size = tensions.Max();
        int cells = Cells(c).Count;
        for (int i = 0; i < tensions.Length; i++) Assert.Equal(tensions[i], -forces[Spring(cells + i)].Z, 0.01 * size);
        double contact = Enumerable.Range(0, cells).Sum(i => Math.Max(0, forces[Spring(i)].Z));
        double pressure = Enumerable.Range(0, cells).Max(i => forces[Spring(i)].Z) / cell;
        Assert.Equal(answer.Contact, contact, 0.01 * Math.Max(size, answer.Contact));
        for (int i = 0; i < tensions.Length; i++) Deviations.Note("Debian's calculix-ccx: plates, tension", $"plate {number + 1}", size, size - forces[Spring(cells + i)].Z - tensions[i]);
        Deviations.Note("Debian's calculix-ccx: plates, contact force", $"plate {number + 1}", Math.Max(size, answer.Contact), Math.Max(size, answer.Contact) + contact - answer.Contact);
        double edge = answer.PressureMax - c.Bed * (Math.Abs(answer.U1) * c.W / Across + Math.Abs(answer.U2) * c.H / Up) / 2;
        Assert.Equal(edge, pressure, 0.03 * answer.PressureMax);
    }

    /// <summary>Ground node of a spring; plate nodes are numbered from 1, ground nodes from 10,001.</summary>
    private static int Spring(int i) => 10_001 + i;

    private static List<(double X, double Y)> Cells(Case c) => [.. Enumerable.Range(0, Across * Up)
        .Select(i => (X: ((i / Up + 0.5) / Across - 0.5) * c.W, Y: ((i % Up + 0.5) / Up - 0.5) * c.H)).Where(p => c.Holds(p.X, p.Y))];

    private static string Deck(Case c)
    {
        var places = Cells(c).Concat(c.Fixings.Select(f => (f.X, f.Y))).ToList();
        var deck = new Deck();
        deck.Line("*NODE, NSET=PLATE");
        for (int i = 0; i < places.Count; i++) deck.Line($"{i + 1}, {places[i].X:R}, {places[i].Y:R}, 0.");
        deck.Line("*NODE");
        deck.Line("20001, 0., 0., 0.");
        deck.Line("20002, 0., 0., 0.");
        deck.Line("*NODE, NSET=GROUND");
        for (int i = 0; i < places.Count; i++) deck.Line($"{Spring(i)}, {places[i].X:R}, {places[i].Y:R}, {Ground:F1}");
        Springs(deck, c, places.Count);
        deck.Line("*RIGID BODY, NSET=PLATE, REF NODE=20001, ROT NODE=20002");
        foreach (string line in new[] { "*BOUNDARY", "GROUND, 1, 3", "20001, 1, 2", "20002, 3, 3" }) deck.Line(line);
        double press = -0.2 * (Math.Abs(c.Load.N) + (Math.Abs(c.Load.Mx) + Math.Abs(c.Load.My)) / Math.Min(c.W, c.H));
        Step(deck, new(press, 0, 0), "1.", print: false);
        Step(deck, c.Load, "0.05", print: true);
        return deck.ToString();
    }

    private static void Springs(Deck deck, Case c, int count)
    {
        int cells = Cells(c).Count;
        for (int i = 0; i < count; i++)
        {
            if (i == 0) deck.Line("*ELEMENT, TYPE=SPRINGA, ELSET=BED");
            if (i >= cells) deck.Line($"*ELEMENT, TYPE=SPRINGA, ELSET=F{i - cells}");
            deck.Line($"{i + 1}, {i + 1}, {Spring(i)}");
        }
        double k = 10 * c.Bed * c.W / Across * c.H / Up;
        Spring(deck, "BED", k, k * Slack);
        for (int i = 0; i < c.Fixings.Length; i++) Spring(deck, $"F{i}", 10 * c.Fixings[i].Stiffness * Slack, 10 * c.Fixings[i].Stiffness);
    }

    /// <summary>Force at 10 mm of shortening and of lengthening.</summary>
    private static void Spring(Deck deck, string set, double pressed, double pulled)
    {
        deck.Line($"*SPRING, ELSET={set}, NONLINEAR");
        deck.Line($"{-pressed:F9}, -10.");
        deck.Line("0., 0.");
        deck.Line($"{pulled:F9}, 10.");
    }

    private static void Step(Deck deck, BracketLoad load, string increment, bool print)
    {
        deck.Line("*STEP, NLGEOM, INC=2000");
        deck.Line("*STATIC");
        deck.Line($"{increment}, 1.");
        deck.Line("*CLOAD");
        deck.Line($"20001, 3, {load.N:F6}");
        deck.Line($"20002, 1, {load.My:F6}");
        deck.Line($"20002, 2, {-load.Mx:F6}");
        if (print) deck.Line("*NODE PRINT, NSET=GROUND, FREQUENCY=2000");
        if (print) deck.Line("RF");
        deck.Line("*END STEP");
    }
}
