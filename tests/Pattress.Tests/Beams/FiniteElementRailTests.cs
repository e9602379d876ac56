using System.Globalization;
using Pattress.Actions.Beams;
using Pattress.Tests.Published;
using Pattress.Tests.References;

namespace Pattress.Tests.Beams;

/// <summary>
/// Eight rails on springs against a general finite-element program (Debian's calculix-ccx, quadratic beam elements that it
/// expands to solids): reactions within 1 % of the largest.
/// </summary>
public class FiniteElementRailTests
{
    private const double Pitch = 12.5, Modulus = 210_000, Width = 8, Depth = 12, Ground = 1000;

    private sealed record Case(double Length, BeamSupport[] Supports, double Own, double From, double To, double Stack, double At, double Force);

    private static readonly Case[] Cases =
    [
        new(2000, [new(100, 50), new(1900, 50)], 0.02, 0, 2000, 0.1, 1000, 20),
        new(2400, [new(100, 80), new(1200, 30), new(2300, 80)], 0.02, 0, 500, 0.2, 1700, 15),
        new(3000, [new(100, 50), new(1100, 35), new(2100, 50), new(2900, 20)], 0.012, 0, 400, 0.15, 2800, 30),
        new(3000, [new(300, 200), new(1500, 10), new(2700, 200)], 0.03, 2600, 3000, 0.3, 0, 10),
        new(1200, [new(200, 20), new(600, 500), new(1000, 20)], 0.05, 300, 900, 0.2, 600, 25),
        new(4000, [new(50, 100), new(1000, 100), new(2000, 100), new(3000, 100), new(3950, 100)], 0.02, 1000, 2000, 0.2, 3500, 40),
        new(1800, [new(600, 60), new(1200, 60)], 0.04, 0, 1800, 0.05, 1800, 12),
        new(2500, [new(0, 150), new(1250, 40), new(2500, 15)], 0.01, 500, 1500, 0.25, 2000, 18),
    ];

    public static TheoryData<int> Numbers => [.. Enumerable.Range(0, Cases.Length)];

    [Theory]
    [MemberData(nameof(Numbers))]
    public void Rail_agrees_with_finite_elements(int number)
    {
        var c = Cases[number];
        var beam = new Beam(c.Length, Modulus * Width * Depth * Depth * Depth / 12, c.Supports);
        var answer = BeamSolver.Solve(beam, new([new(0, c.Length, c.Own), new(c.From, c.To, c.Stack)], [new(c.At, c.Force)]))!;
        var forces = FiniteElements.GroundForces(Text(c));
        double largest = answer.Reactions.Max(Math.Abs);
        for (int i = 0; i < c.Supports.Length; i++)
        {
            Assert.Equal(answer.Reactions[i], forces[10_001 + i].Y, 0.01 * largest);
            Deviations.Note("Debian's calculix-ccx: rails, reaction", $"rail {number + 1}", largest, largest + forces[10_001 + i].Y - answer.Reactions[i]);
        }
    }

    private static string Text(Case c)
    {
        int nodes = (int)(c.Length / Pitch) + 1;
        var deck = new Deck();
        deck.Line("*NODE, NSET=RAIL");
        for (int i = 0; i < nodes; i++) deck.Line($"{i + 1}, {i * Pitch:F3}, 0., 0.");
        deck.Line("*NODE, NSET=GROUND");
        for (int s = 0; s < c.Supports.Length; s++) deck.Line($"{10_001 + s}, {c.Supports[s].At:F3}, {-Ground:F1}, 0.");
        deck.Line("*ELEMENT, TYPE=B32, ELSET=BEAM");
        for (int i = 0; i + 2 < nodes; i += 2) deck.Line($"{i / 2 + 1}, {i + 1}, {i + 2}, {i + 3}");
        for (int s = 0; s < c.Supports.Length; s++)
        {
            deck.Line($"*ELEMENT, TYPE=SPRINGA, ELSET=S{s}");
            deck.Line($"{5001 + s}, {Node(c.Supports[s].At)}, {10_001 + s}");
            deck.Line($"*SPRING, ELSET=S{s}");
            deck.Line($"{c.Supports[s].Stiffness:F6}");
        }
        foreach (string line in new[] { "*MATERIAL, NAME=STEEL", "*ELASTIC", "210000., 0.3", "*BEAM SECTION, ELSET=BEAM, MATERIAL=STEEL, SECTION=RECT" }) deck.Line(line);
        deck.Line($"{Width:F3}, {Depth:F3}");
        foreach (string line in new[] { "0., 0., 1.", "*BOUNDARY", "GROUND, 1, 3", "RAIL, 3, 5", "1, 1, 1", "*STEP", "*STATIC", "*CLOAD" }) deck.Line(line);
        for (int i = 0; i < nodes; i++) deck.Line($"{i + 1}, 2, {-Force(c, i, nodes):F9}");
        foreach (string line in new[] { "*NODE PRINT, NSET=GROUND", "RF", "*END STEP" }) deck.Line(line);
        return deck.ToString();
    }

    private static int Node(double at) => (int)Math.Round(at / Pitch) + 1;

    /// <summary>Nodal force: a sixth, four sixths and a sixth of each element's uniform load, and the point load.</summary>
    private static double Force(Case c, int i, int nodes)
    {
        double force = i == Node(c.At) - 1 ? c.Force : 0;
        for (int e = 0; e + 2 < nodes; e += 2)
        {
            if (i < e || i > e + 2) continue;
            double middle = (e + 1) * Pitch, q = c.Own + (middle > c.From && middle < c.To ? c.Stack : 0);
            force += q * 2 * Pitch * (i == e + 1 ? 4 : 1) / 6;
        }
        return force;
    }
}
