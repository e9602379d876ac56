using System.Globalization;
using Pattress.Brackets;
using Pattress.Tests.Beams;

namespace Pattress.Tests.Brackets;

/// <summary>Fixing groups and plates from other people's tables (published_d.csv); N, mm unless the row says otherwise.</summary>
public class PublishedBracketTests
{
    private static readonly CsvTable Table = CsvTable.Parse(File.ReadAllText("Published/published_d.csv"));

    public static TheoryData<int> Rows => [.. Enumerable.Range(0, Table.Rows.Count)];

    [Theory]
    [MemberData(nameof(Rows))]
    public void Bracket_agrees_with_the_table(int index)
    {
        var row = Table.Rows[index];
        var cases = row["case"].Split('|').Select(Case).ToArray();
        PublishedBeamTests.Check(row, row["method"] switch
        {
            "pivot" => Pivot(cases[0])[int.Parse(row["quantity"][1..], CultureInfo.InvariantCulture)],
            "ratio" => Pivot(cases[1])[^1] / Pivot(cases[0])[^1],
            "shear" => Shear(cases[0], row["quantity"]),
            "ic" => Centre(cases[0]),
            _ => Contact(cases[0], row["quantity"]),
        });
    }

    private static Dictionary<string, string> Case(string text) => text.Split(';').Select(p => p.Split('=')).ToDictionary(p => p[0], p => p[1]);

    private static double N(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    /// <summary>Fixings above a pivot: the plate bears on a foot a hundredth of a micrometre high, on a bed that hardly gives.</summary>
    private static double[] Pivot(Dictionary<string, string> c)
    {
        var fixings = c["y"].Split(' ').Select(y => new FixingPoint(0, N(y), 100)).ToArray();
        var tensions = new double[fixings.Length];
        var answer = ContactSolver.Solve(Plate.Rectangle(-30, 30, -5e-6, 5e-6), fixings, new Bed(1e12), new(0, 0, N(c["M"])), tensions);
        Assert.Equal(ContactStatus.Balanced, answer.Status);
        return tensions;
    }

    private static double Contact(Dictionary<string, string> c, string quantity)
    {
        double b = N(c["b"]), h = N(c["h"]), n = N(c["N"]), kf = N(c["kf"]);
        var fixings = c["rows"].Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(r => r.Split(':'))
            .Select(r => new FixingPoint(0, N(r[0]), N(r[1]))).ToArray();
        var tensions = new double[fixings.Length];
        var a = ContactSolver.Solve(Plate.Rectangle(-b / 2, b / 2, 0, h), fixings, new Bed(kf), new(n, 0, N(c["M"]) + n * h / 2), tensions);
        Assert.Equal(ContactStatus.Balanced, a.Status);
        return quantity switch
        {
            "x" => a.Area / b,
            "C" => a.Contact,
            "p" => a.PressureMax,
            "pmin" => -kf * Math.Max(a.U0, a.U0 + a.U2 * h),
            _ => tensions[int.Parse(quantity[1..], CultureInfo.InvariantCulture)],
        };
    }

    private static double Shear(Dictionary<string, string> c, string quantity)
    {
        var points = c["xy"].Split(' ').Select(p => p.Split(':')).Select(p => new ShearPoint(N(p[0]), N(p[1]))).ToArray();
        double v = N(c["V"]), t = v * N(c["e"]);
        var all = new ShearForce[points.Length];
        var turned = new ShearForce[points.Length];
        Assert.True(ShearGroup.TrySolve(points, 0, v, t, all));
        Assert.True(ShearGroup.TrySolve(points, 0, 0, t, turned));
        return quantity switch
        {
            "torsion_x" => turned.Max(f => Math.Abs(f.X)),
            "torsion_y" => turned.Max(f => Math.Abs(f.Y)),
            "direct" => Math.Abs(all[0].Y - turned[0].Y),
            "max" => all.Max(f => f.Size),
            "min" => all.Min(f => f.Size),
            "J" => Math.Abs(t * points[0].Y / turned[0].X),
            "S0x" => Math.Abs(all[0].X),
            "S0y" => Math.Abs(all[0].Y),
            _ => all[int.Parse(quantity[1..], CultureInfo.InvariantCulture)].Size,
        };
    }

    private static double Centre(Dictionary<string, string> c)
    {
        double s = N(c["s"]) * 25.4;
        var fixings = Enumerable.Range(0, (int)N(c["n"])).Select(i => new Corner(0, i * s)).ToArray();
        var at = new Corner(N(c["e"]) * 25.4, fixings.Average(f => f.Y));
        return InstantaneousCentre.Coefficient(fixings, at, -90, SlipCurve.Aisc) ?? double.NaN;
    }
}
