using System.Diagnostics;
using System.Runtime.CompilerServices;
using System.Text.Json;
using Pattress.Actions;
using Pattress.Brackets;
using Pattress.Tests.Published;

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
        using var answers = JsonDocument.Parse(Python(Script(), Json(brackets)));
        Assert.Equal(Cases, answers.RootElement.GetArrayLength());
        int close = 0;
        for (int i = 0; i < Cases; i++) close += Compare(i, brackets[i], answers.RootElement[i]) ? 1 : 0;
        Assert.True(close >= Cases - 3, $"scipy itself balanced only {close} of {Cases} cases");
    }

    /// <summary>False when scipy's own residual is too large for a comparison at 1e-6.</summary>
    private static bool Compare(int index, RandomBracket bracket, JsonElement reference)
    {
        if (reference.GetProperty("residual").GetDouble() > 1e-8) return false;
        var answer = bracket.Solve();
        Assert.Equal(ContactStatus.Balanced, answer.Status);
        double[] expected = [.. reference.GetProperty("tensions").EnumerateArray().Select(t => t.GetDouble())];
        double contact = reference.GetProperty("contact").GetDouble(), size = Math.Max(contact, expected.Max());
        for (int i = 0; i < expected.Length; i++)
            Assert.True(Math.Abs(expected[i] - bracket.Tensions[i]) <= 1e-6 * size, $"case {index}, fixing {i}: {bracket.Tensions[i]:R} against {expected[i]:R}");
        for (int i = 0; i < expected.Length; i++) Deviations.Note("scipy: random brackets", $"case {index}", size, size + bracket.Tensions[i] - expected[i]);
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
                Rows(json, "outline", b.Corners.Select(c => new[] { c.X, c.Y }));
                Rows(json, "fixings", b.Used.ToArray().Select(f => new[] { f.X, f.Y, f.Stiffness, f.Gap }));
                json.WriteNumber("bed", b.Bed.Modulus);
                Rows(json, "load", [[b.Load.N, b.Load.Mx, b.Load.My]], flat: true);
                json.WriteEndObject();
            }
            json.WriteEndArray();
        }
        return System.Text.Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void Rows(Utf8JsonWriter json, string name, IEnumerable<double[]> rows, bool flat = false)
    {
        json.WriteStartArray(name);
        foreach (var row in rows)
        {
            if (!flat) json.WriteStartArray();
            foreach (double v in row) json.WriteNumberValue(v);
            if (!flat) json.WriteEndArray();
        }
        json.WriteEndArray();
    }

    private static string Script([CallerFilePath] string here = "") =>
        Path.Combine(Path.GetDirectoryName(here)!, "..", "References", "contact_reference.py");

    private static string Python(string script, string input)
    {
        string file = Path.GetTempFileName();
        try
        {
            File.WriteAllText(file, input);
            var start = new ProcessStartInfo("/usr/bin/python3", [script, file]) { RedirectStandardOutput = true, RedirectStandardError = true };
            using var python = Process.Start(start) ?? throw new InvalidOperationException("no /usr/bin/python3");
            var errors = python.StandardError.ReadToEndAsync();
            string output = python.StandardOutput.ReadToEnd();
            python.WaitForExit();
            Assert.True(python.ExitCode == 0, errors.Result);
            return output;
        }
        finally { File.Delete(file); }
    }
}
