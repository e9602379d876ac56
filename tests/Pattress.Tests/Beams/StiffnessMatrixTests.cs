using System.Text.Json;
using Pattress.Actions.Beams;
using Pattress.Tests.Published;
using Pattress.Tests.References;

namespace Pattress.Tests.Beams;

/// <summary>
/// 120 random rails against stiffness matrices in numpy, a program written apart from ours (References/beam_reference.py): one to four sections, hinges, overhangs, clamped ends,
/// springs, settlements, loads over parts, and every third in cups. Reactions, deflections and moments to 1e-6 of the largest. Places lie on a grid of 10 mm, since stiffness
/// matrices lose their digits on shorter pieces.
/// </summary>
public class StiffnessMatrixTests
{
    private sealed record Case(Beam Beam, BeamLoads Loads, double[] Probes);

    [Fact]
    public void Random_rails_agree_with_stiffness_matrices()
    {
        var cases = Enumerable.Range(0, 120).Select(Next).ToList();
        using var answers = JsonDocument.Parse(Python.Run("beam_reference.py", Json(cases)));
        int carried = 0;
        for (int i = 0; i < cases.Count; i++)
        {
            var ours = BeamSolver.Solve(cases[i].Beam, cases[i].Loads);
            bool stands = answers.RootElement[i].ValueKind != JsonValueKind.Null;
            Assert.True(stands == ours is not null, $"case {i}: {(stands ? "it stands" : "it moves freely")}");
            if (ours is null) continue;
            carried++;
            Compare(i, answers.RootElement[i], "reactions", [.. ours.Reactions]);
            Compare(i, answers.RootElement[i], "deflections", [.. cases[i].Probes.Select(ours.DeflectionAt)]);
            Compare(i, answers.RootElement[i], "moments", [.. cases[i].Probes.Select(ours.MomentAt)]);
        }

        Assert.InRange(carried, 90, 120);
    }

    private static void Compare(int number, JsonElement reference, string what, double[] ours)
    {
        double[] expected = [.. reference.GetProperty(what).EnumerateArray().Select(v => v.GetDouble())];
        double size = Math.Max(1e-3, expected.Max(Math.Abs));
        for (int i = 0; i < ours.Length; i++)
        {
            Assert.True(Math.Abs(expected[i] - ours[i]) <= 1e-6 * size, $"case {number}, {what} {i}: {ours[i]:R} against {expected[i]:R}");
            Deviations.Note("numpy: rails by stiffness matrices, " + what, $"rail {number}", size, size + ours[i] - expected[i]);
        }
    }

    private static Case Next(int seed)
    {
        var random = new Random(seed);
        double Span(double low, double high) => low + (high - low) * random.NextDouble();
        double On(double x) => 10 * Math.Round(x / 10);
        bool cups = seed % 3 == 0, joined = seed % 3 == 1;
        double[] parts = [.. Enumerable.Range(0, random.Next(1, 5)).Select(_ => On(Span(300, 1200)))];
        double length = parts.Sum();
        int n = random.Next(cups ? 3 : 2, 7);
        var supports = Enumerable.Range(0, n).Select(i => new BeamSupport(
            On(length * (i + Span(0.15, 0.85)) / n), random.Next(2) == 0 ? double.PositiveInfinity : Span(5, 300), OneSided: cups, Settlement: random.Next(3) == 0 ? Span(-3, 3) : 0)).ToList();
        if (seed % 4 == 1) supports.Insert(0, new(0, Clamped: true));
        // A joint in the last but one bay: with three supports or a clamp it can stand, or it cannot, and both must say so.
        double[] hinges = joined && supports.Count > 2 ? [On((supports[^2].At + supports[^3].At) / 2 + 1)] : [];
        var loads = new BeamLoads(
            [new(0, length, 0.02), .. Enumerable.Range(0, random.Next(1, 4)).Select(_ => Span(0, 0.75) is var from ? new UniformLoad(On(from * length), On((from + Span(0.03, 0.2)) * length) + 10, Span(-0.1, 0.5)) : default)],
            [.. Enumerable.Range(0, random.Next(0, 3)).Select(_ => new PointLoad(On(Span(0, length)), Span(-10, 60)))]);
        return new(new Beam([.. parts.Select(p => new BeamStretch(p, Math.Pow(10, Span(8, 10))))], supports, hinges), loads, [.. Enumerable.Range(1, 7).Select(i => On(length * i / 8.3))]);
    }

    private static string Json(List<Case> cases)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartArray();
            foreach (var c in cases) Write(json, c);
            json.WriteEndArray();
        }
        return System.Text.Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void Write(Utf8JsonWriter json, Case c)
    {
        json.WriteStartObject();
        Lists(json, "stretches", c.Beam.Stretches.Select(s => new[] { s.Length, s.Ei }));
        Lists(json, "uniform", c.Loads.Uniform.Select(u => new[] { u.From, u.To, u.PerLength }));
        Lists(json, "points", c.Loads.Points.Select(p => new[] { p.At, p.Force }));
        Numbers(json, "hinges", c.Beam.Hinges);
        Numbers(json, "probes", c.Probes);
        json.WriteStartArray("supports");
        foreach (var s in c.Beam.Supports)
        {
            json.WriteStartObject();
            json.WriteNumber("at", s.At);
            // Rigid is written as 0.
            json.WriteNumber("k", s.Rigid ? 0 : s.Stiffness);
            json.WriteNumber("settlement", s.Settlement);
            json.WriteBoolean("clamped", s.Clamped);
            json.WriteBoolean("cup", s.OneSided);
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Lists(Utf8JsonWriter json, string name, IEnumerable<double[]> rows)
    {
        json.WriteStartArray(name);
        foreach (var row in rows)
        {
            json.WriteStartArray();
            foreach (double v in row) json.WriteNumberValue(v);
            json.WriteEndArray();
        }
        json.WriteEndArray();
    }

    private static void Numbers(Utf8JsonWriter json, string name, IEnumerable<double> values)
    {
        json.WriteStartArray(name);
        foreach (double v in values) json.WriteNumberValue(v);
        json.WriteEndArray();
    }
}
