using System.Text.Json;
using Pattress.Brackets;

namespace Pattress.Tests.Brackets;

/// <summary>Worked cases with nine digits (statics_cases.json), as they are and moved, turned and mirrored.</summary>
public class WorkedContactTests
{
    private static readonly JsonElement Cases = JsonDocument.Parse(File.ReadAllText("Published/statics_cases.json")).RootElement.GetProperty("contact");

    public static TheoryData<int, double, double, double, bool> Moves
    {
        get
        {
            var data = new TheoryData<int, double, double, double, bool>();
            for (int i = 0; i < Cases.GetArrayLength(); i++)
                foreach (var (x, y, turn, mirror) in new[] { (0.0, 0.0, 0.0, false), (310, -47, 0, false), (0, 0, 90, false), (-5, 900, 33, false), (0, 0, 0, true), (12, 7, -118, true) })
                    data.Add(i, x, y, turn, mirror);
            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Moves))]
    public void Worked_case_agrees(int index, double x, double y, double turn, bool mirror)
    {
        var c = Cases[index];
        var m = new Move(x, y, turn * Math.PI / 180, mirror);
        double[] r = Numbers(c, "rect_mm"), f = Numbers(c, "F_N_Mx_My"), expected = Numbers(c, "tension_N");
        var plate = Plate.Of([m.Of(r[0], r[2]), m.Of(r[1], r[2]), m.Of(r[1], r[3]), m.Of(r[0], r[3])]);
        var fixings = c.GetProperty("fixings_x_y_k_gap").EnumerateArray().Select(e => e.EnumerateArray().Select(v => v.GetDouble()).ToArray())
            .Select(v => new FixingPoint(m.Of(v[0], v[1]).X, m.Of(v[0], v[1]).Y, v[2], v[3])).ToArray();
        var tensions = new double[fixings.Length];
        var a = ContactSolver.Solve(plate, fixings, new Bed(c.GetProperty("kb_N_per_mm3").GetDouble()), m.Of(f[0], f[1], f[2]), tensions);
        Assert.Equal(ContactStatus.Balanced, a.Status);
        for (int i = 0; i < expected.Length; i++) Close(expected[i], tensions[i]);
        Close(c.GetProperty("contact_force_N").GetDouble(), a.Contact);
        Close(c.GetProperty("contact_area_mm2").GetDouble(), a.Area);
        Close(c.GetProperty("p_max_MPa").GetDouble(), a.PressureMax);
        if (c.TryGetProperty("closed_c_mm", out var depth)) Close(depth.GetDouble(), a.Area / 60);
    }

    /// <summary>The cases carry nine digits: half of the ninth.</summary>
    private static void Close(double expected, double value) => Assert.InRange(value, expected - Tolerance(expected), expected + Tolerance(expected));

    private static double Tolerance(double printed) =>
        printed == 0 ? 1e-9 : 0.51 * Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(printed))) - 8);

    private static double[] Numbers(JsonElement c, string name) => [.. c.GetProperty(name).EnumerateArray().Select(v => v.GetDouble())];
}

/// <summary>Moving, turning and mirroring a bracket; its load follows.</summary>
internal readonly record struct Move(double X, double Y, double Turn, bool Mirror)
{
    internal Corner Of(double x, double y)
    {
        if (Mirror) x = -x;
        return new(X + x * Math.Cos(Turn) - y * Math.Sin(Turn), Y + x * Math.Sin(Turn) + y * Math.Cos(Turn));
    }

    internal BracketLoad Of(double n, double mx, double my)
    {
        var turned = (this with { X = 0, Y = 0 }).Of(mx, my);
        return new(n, turned.X + n * X, turned.Y + n * Y);
    }
}
