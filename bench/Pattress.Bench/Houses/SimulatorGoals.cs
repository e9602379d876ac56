using System.Globalization;
using System.Text;

namespace Pattress.Bench;

/// <summary>The goals that were set before, each beside what came out.</summary>
internal static class SimulatorGoals
{
    public static void Write(StringBuilder text, List<SimulatorRow> rows)
    {
        List<SimulatorRow> Of(string scenario, string fitter) => [.. rows.Where(r => r.Scenario == scenario && r.Fitter == fitter)];
        List<SimulatorRow> plain = Of("plain", "posterior"), three = Of("three", "jointly"), policy = Of("identity", "policy"), routine = Of("identity", "fixed routine");
        if (plain.Count == 0 || three.Count == 0 || policy.Count == 0) return;
        double byHand = new[] { "tap, middle", "tap, magnet", "two, step" }.Max(f => Of("plain", f).Average(r => r.Usable ? 1.0 : 0)), usable = plain.Average(r => r.Usable ? 1.0 : 0);
        text.Append("## Goals, and what came out\n\n| | goal | found | walls | |\n|---|---|---|---|---|\n");
        Row(text, "first hole meets the support", ".90", plain.Average(r => r.Ok ? 1.0 : 0), plain.Count, v => v >= 0.9);
        Row(text, "usable first hole, above the best by hand", ".15 more", usable - byHand, plain.Count, v => v >= 0.15);
        Row(text, "holes until one meets", "1.30", plain.Average(r => r.Holes), plain.Count, v => v <= 1.3);
        Row(text, "calibration error of the first hole", ".03", SimulatorReport.Report(plain).CalibrationError, plain.Count, v => v <= 0.03);
        Row(text, "first hole, three zones jointly", ".95", three.Average(r => r.Ok ? 1.0 : 0), three.Select(r => r.Wall).Distinct().Count(), v => v >= 0.95);
        Row(text, "wall identified by the policy's own checks", ".95", policy.Average(r => r.Usable ? 1.0 : 0), policy.Count, v => v >= 0.95);
        Row(text, "their minutes, of the fixed routine's", ".60", policy.Average(r => r.Minutes) / routine.Average(r => r.Minutes), policy.Count, v => v <= 0.6);
        text.Append('\n');
    }

    private static void Row(StringBuilder text, string what, string goal, double found, int walls, Func<double, bool> met) =>
        text.Append(CultureInfo.InvariantCulture, $"| {what} | {goal} | {found:0.000} | {walls} | {(met(found) ? "met" : "not met")} |\n");
}
