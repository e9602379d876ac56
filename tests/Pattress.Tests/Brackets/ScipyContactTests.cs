using System.Text.Json;
using Pattress.Actions;
using Pattress.Brackets;
using Pattress.Tests.Published;
using Pattress.Tests.References;

namespace Pattress.Tests.Brackets;

/// <summary>
/// 300 random brackets against scipy, a program written apart from ours (References/contact_reference.py). It needs
/// /usr/bin/python3 with scipy; without them the test fails.
/// </summary>
public class ScipyContactTests
{
    private const int Cases = 300;

    [Fact]
    public void Random_brackets_agree_with_scipy()
    {
        var brackets = Enumerable.Range(0, Cases).Select(RandomBracket.Ordinary).ToList();
        using var answers = JsonDocument.Parse(Python.Run("contact_reference.py", Json(brackets)));
        Assert.Equal(Cases, answers.RootElement.GetArrayLength());
        int close = 0;
        for (int i = 0; i < Cases; i++) close += Compare(i, brackets[i], answers.RootElement[i]) ? 1 : 0;
        Assert.True(close >= Cases - 3, $"scipy itself balanced only {close} of {Cases} cases");
    }

    /// <summary>
    /// Sixty brackets of odd make: two feet and a slot, fixings set with a tension and others with a gap, fixings that yield at seven tenths of what they would get, a wall that
    /// crushes at eight tenths. What yields and cannot carry its load any more is left out; most can.
    /// </summary>
    [Fact]
    public void Odd_brackets_agree_with_scipy()
    {
        var brackets = Enumerable.Range(0, 60).Select(Odd).Where(b => b.Solve().Status == ContactStatus.Balanced).ToList();
        Assert.InRange(brackets.Count, 45, 60);
        using var answers = JsonDocument.Parse(Python.Run("contact_reference.py", Json(brackets)));
        int close = 0;
        for (int i = 0; i < brackets.Count; i++) close += Compare(i, brackets[i], answers.RootElement[i], "scipy: odd brackets") ? 1 : 0;
        Assert.True(close >= brackets.Count - 5, $"scipy itself balanced only {close} of {brackets.Count} cases");
        Assert.Contains(brackets, b => b.Bed.PressureCap < 10 && b.Solve() is var a && a.PressureMax > b.Bed.PressureCap * (1 - 1e-9));
        Assert.Contains(brackets, b => b.Solve().Contact > 0 && Enumerable.Range(0, b.Count).Any(i => b.Tensions[i] > b.Fixings[i].TensionCap * (1 - 1e-9)));
    }

    private static RandomBracket Odd(int seed)
    {
        var b = RandomBracket.Ordinary(seed);
        static Corner[] R(double l, double r, double low, double high) => [new(l, low), new(r, low), new(r, high), new(l, high)];
        double w = b.Span(30, 80), h = b.Span(15, 40), apart = b.Span(5, 60);
        b.Feet = seed % 3 == 0 ? [R(-w, w, apart, apart + h)] : [R(-w, w, apart, apart + h), R(-w / 2, w / 2, -apart - h, -apart)];
        b.Slots = seed % 2 == 0 ? [R(-w / 3, w / 4, apart + h / 4, apart + h / 2)] : [];
        b.Plate = Plate.Of(b.Feet, b.Slots);
        for (int i = 0; i < b.Count; i++)
            b.Fixings[i] = new(b.Span(-0.9, 0.9) * w, apart + h * b.Span(0.1, 0.9), b.Log(100, 3000), i == 1 ? b.Span(0, 0.05) : 0, i == 0 ? b.Span(5, 60) : 0);
        b.Load = new(b.Span(-60, 120), b.Span(-3000, 3000), b.Span(-2000, 8000));
        var free = b.Solve();
        if (seed % 4 == 1) b.Fixings[0] = b.Fixings[0] with { TensionCap = 0.7 * b.Tensions[0] + 1 };
        if (seed % 4 == 2) b.Bed = b.Bed with { PressureCap = 0.8 * free.PressureMax + 0.001 };
        return b;
    }

    /// <summary>False when scipy's own residual is too large for a comparison at 1e-6.</summary>
    private static bool Compare(int index, RandomBracket bracket, JsonElement reference, string what = "scipy: random brackets")
    {
        if (reference.GetProperty("residual").GetDouble() > 1e-8) return false;
        var answer = bracket.Solve();
        Assert.Equal(ContactStatus.Balanced, answer.Status);
        double[] expected = [.. reference.GetProperty("tensions").EnumerateArray().Select(t => t.GetDouble())];
        double contact = reference.GetProperty("contact").GetDouble(), size = Math.Max(contact, expected.Max());
        for (int i = 0; i < expected.Length; i++)
            Assert.True(Math.Abs(expected[i] - bracket.Tensions[i]) <= 1e-6 * size, $"case {index}, fixing {i}: {bracket.Tensions[i]:R} against {expected[i]:R}");
        for (int i = 0; i < expected.Length; i++) Deviations.Note(what, $"case {index}", size, size + bracket.Tensions[i] - expected[i]);
        Assert.True(Math.Abs(contact - answer.Contact) <= 1e-6 * size, $"case {index}: contact {answer.Contact:R} against {contact:R}");
        return true;
    }

    private static string Json(List<RandomBracket> brackets)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartArray();
            foreach (var b in brackets)
            {
                json.WriteStartObject();
                json.WriteStartArray("rings");
                foreach (var foot in b.Feet) Ring(json, 1, foot);
                foreach (var slot in b.Slots) Ring(json, -1, slot);
                json.WriteEndArray();
                // No cap is written as 0.
                Rows(json, "fixings", b.Used.ToArray().Select(f => new[] { f.X, f.Y, f.Stiffness, f.Gap, f.PreTension, double.IsFinite(f.TensionCap) ? f.TensionCap : 0 }));
                json.WriteNumber("bed", b.Bed.Modulus);
                json.WriteNumber("crush", double.IsFinite(b.Bed.PressureCap) ? b.Bed.PressureCap : 0);
                Rows(json, "load", [[b.Load.N, b.Load.Mx, b.Load.My]], flat: true);
                json.WriteEndObject();
            }
            json.WriteEndArray();
        }
        return System.Text.Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void Ring(Utf8JsonWriter json, int sign, Corner[] ring)
    {
        json.WriteStartArray();
        json.WriteNumberValue(sign);
        Rows(json, null, ring.Select(c => new[] { c.X, c.Y }));
        json.WriteEndArray();
    }

    private static void Rows(Utf8JsonWriter json, string? name, IEnumerable<double[]> rows, bool flat = false)
    {
        if (name is null) json.WriteStartArray();
        else json.WriteStartArray(name);
        foreach (var row in rows)
        {
            if (!flat) json.WriteStartArray();
            foreach (double v in row) json.WriteNumberValue(v);
            if (!flat) json.WriteEndArray();
        }
        json.WriteEndArray();
    }
}
