using System.Text.Json;
using Pattress.Supports;

namespace Pattress.Tests.Supports;

/// <summary>The worked cases S1 to S4 (Published/studs.json).</summary>
internal static class StudCases
{
    public static JsonElement Case(string start) =>
        JsonDocument.Parse(System.IO.File.ReadAllText("Published/studs.json")).RootElement.EnumerateArray()
            .First(c => c.GetProperty("name").GetString()!.StartsWith(start, StringComparison.Ordinal));

    public static double[] Numbers(this JsonElement e, string name) => [.. e.GetProperty(name).EnumerateArray().Select(x => x.GetDouble())];

    public static double[] Gaps(this JsonElement e)
    {
        var pairs = e.GetProperty("gap_pmf").EnumerateObject().Select(p => (Step: int.Parse(p.Name, System.Globalization.CultureInfo.InvariantCulture), P: p.Value.GetDouble())).ToList();
        var gaps = new double[pairs.Max(p => p.Step) + 1];
        foreach (var (step, p) in pairs) gaps[step] = p;
        return gaps;
    }

    /// <summary>
    /// The weights of S1 to S3 from their observations by the model the case states, in full precision: nine printed digits
    /// of a weight are too few for nine digits of a result. S4 states its weights exactly.
    /// </summary>
    public static double[] Weights(this JsonElement e)
    {
        var printed = e.Numbers("weights");
        if (!e.TryGetProperty("observations", out var seen)) return printed;
        double h = e.GetProperty("h_mm").GetDouble();
        double[] exact = [.. printed.Select((_, i) => seen.EnumerateArray().Aggregate(1.0, (w, o) => w * Weight(o, i * h)))];
        for (int i = 0; i < printed.Length; i++) Printed(printed[i], exact[i]);
        return exact;
    }

    /// <summary>Tap: pn .85, pf .10, b 24, s 6, reach 75. Magnet: p .8, sd 7 cut at 25, rho 1.5e-4, centre inside the sweep. Probe: 19 mm, .98, .02.</summary>
    private static double Weight(JsonElement o, double c) => o[0].GetString() switch
    {
        "tap" => Tap(Math.Abs(o[1].GetDouble() - c), o[2].GetBoolean()),
        "mag" => Magnet(o, c),
        _ => Math.Abs(o[1].GetDouble() - c) > 19 ? 1 : o[2].GetBoolean() ? 0.98 / 0.02 : 0.02 / 0.98,
    };

    private static double Tap(double d, bool solid)
    {
        double p = 0.10 + (0.75 / (1 + Math.Exp((d - 24) / 6)));
        return d > 75 ? 1 : solid ? p / 0.10 : (1 - p) / 0.90;
    }

    private static double Magnet(JsonElement o, double c)
    {
        if (c < o[1][0].GetDouble() || c > o[1][1].GetDouble()) return 1;
        return 0.2 + (0.8 * o[2].EnumerateArray().Sum(h => Normal.CutDensity(h.GetDouble() - c, 7, 25, Normal.Within(7, 25))) / 1.5e-4);
    }

    /// <summary>Half the last of nine printed digits.</summary>
    public static void Printed(double expected, double actual)
    {
        double half = expected == 0 ? 5e-10 : 0.5 * Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(expected))) - 8);
        Assert.True(Math.Abs(expected - actual) <= half * 1.000001, $"expected {expected:R}, got {actual:R}");
    }
}
