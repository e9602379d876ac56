using System.Globalization;
using System.Text;
using Pattress.Walls;

namespace Pattress.Bench;

/// <summary>Makes the report of the simulator from the files of its pieces: <c>simulate report FOLDER DOCS</c>.</summary>
internal static class SimulatorReport
{
    private static readonly (string Scenario, string Title)[] Lines =
    [
        ("plain", "Plain walls: one window of 640 mm, taps each 40 mm, at most two sweeps of 140 mm"),
        ("three", "Three windows of one wall"),
        ("offpitchsteel", "Steel studs off their pitch by up to 30 mm"), ("pipes", "Two pipes that draw the magnet"),
        ("aliketaps", "Taps that sound like the one before"), ("seconddatum", "A second datum past a door"), ("patches", "Four times as many solid-sounding patches"),
    ];

    public static void Write(string folder, string docs)
    {
        List<SimulatorRow> rows = [.. Directory.GetFiles(folder, "*.csv").Order(StringComparer.Ordinal).SelectMany(File.ReadLines).Where(l => l.Length > 0).Select(SimulatorRow.Parse)];
        var text = new StringBuilder("""
            # Houses that do not exist: the simulator's report

            Made by `dotnet run -c Release --project bench/Pattress.Bench -- simulate SCENARIO FROM COUNT FILE` (a piece each) and then
            `simulate report FOLDER docs/theory`; seed 20240601, the same walls for every fitter. Every number in the simulator is assumed.

            **A simulator proves the method, not houses.** It shows that the posterior gets out of its readings what is in them, and that what
            it states is true where walls are as it takes them to be. Whether real walls are is told only by the log of what was predicted
            and what the drill found, which every job keeps.

            A first hole *hits* when it meets the support at all, and is *usable* 10 mm inside its edge; the posterior's first hole goes where
            that is likeliest. Holes are counted until one hits. Minutes: tap .05, sweep .5, hole 1.5, filling 6 for each that missed (assumed).
            Calibration error: mean absolute difference of stated and found, ten bins, weighted by count.
            How many walls a table rests on stands with it.


            """.ReplaceLineEndings("\n"));
        SimulatorGoals.Write(text, rows);
        foreach (var (scenario, title) in Lines) Fitters(text, [.. rows.Where(r => r.Scenario == scenario && r.Fitter != "no stud here")], title);
        Exact(text, rows);
        Stated(text, "\"No stud here\", each quarter of the window, before any hole (plain walls)", [.. rows.Where(r => r is { Scenario: "plain", Fitter: "no stud here" })]);
        Wrong(text, rows);
        Others(text, rows);
        text.Append("\n![Stated and found](reliability.svg)\n");
        File.WriteAllText(Path.Combine(docs, "simulator.md"), text.ToString());
        File.WriteAllText(Path.Combine(docs, "reliability.svg"), ReliabilityPicture.Svg(
            [("first hole, plain walls", Report(rows, "plain", "posterior")), ("\u201cno stud here\u201d", Report(rows, "plain", "no stud here")), ("first hole, three zones jointly", Report(rows, "three", "jointly"))]));
    }

    private static LearningReport Report(List<SimulatorRow> rows, string scenario, string fitter) => Report([.. rows.Where(r => r.Scenario == scenario && r.Fitter == fitter)]);

    internal static LearningReport Report(List<SimulatorRow> rows) =>
        Learning.Report([.. rows.Where(r => !double.IsNaN(r.Predicted)).Select((r, i) => new PredictedFound($"{i}", r.Predicted, r.Ok))]);

    private static void Fitters(StringBuilder text, List<SimulatorRow> rows, string title)
    {
        if (rows.Count == 0) return;
        text.Append(CultureInfo.InvariantCulture, $"## {title}\n\n{rows.Select(r => r.Wall).Distinct().Count()} walls.\n\n| fitter | first hole hits | usable | holes | taps | sweeps | minutes | of them filling | Brier | log score | calibration error |\n|---|---|---|---|---|---|---|---|---|---|---|\n");
        foreach (var g in rows.GroupBy(r => r.Fitter))
        {
            var report = Report([.. g]);
            string scores = report.Count == 0 ? " | | " : string.Create(CultureInfo.InvariantCulture, $"{report.Brier:.000} | {report.LogScore:.000} | {report.CalibrationError:.000}");
            text.Append(CultureInfo.InvariantCulture, $"| {g.Key} | {Share(g, r => r.Ok)} | {Share(g, r => r.Usable)} | {g.Average(r => r.Holes):0.00} | {g.Average(r => r.Taps):0.0} | {g.Average(r => r.Sweeps):0.00} | {g.Average(r => r.Minutes):0.0} | {g.Average(r => r.Filler):0.0} | {scores} |\n");
        }
        text.Append('\n');
    }

    /// <summary>A share with its standard error.</summary>
    private static string Share(IEnumerable<SimulatorRow> rows, Func<SimulatorRow, bool> which)
    {
        double n = rows.Count(), p = rows.Count(which) / n;
        return string.Create(CultureInfo.InvariantCulture, $"{p:.000} ± {Math.Sqrt(p * (1 - p) / n):.000}");
    }

    private static void Exact(StringBuilder text, List<SimulatorRow> rows)
    {
        List<SimulatorRow> exact = [.. rows.Where(r => r is { Scenario: "exact", Fitter: "exact" })], ours = [.. rows.Where(r => r is { Scenario: "exact", Fitter: "posterior" })];
        if (exact.Count == 0) return;
        text.Append(string.Create(CultureInfo.InvariantCulture, $"""
            ## Against the simulator's own exact model

            {exact.Count} of the plain walls. On the readings that the posterior chose, 60,000 walls a window are drawn from the simulator itself and weighted by how
            well they explain the readings (nothing of the library in it but the normal distribution). It then says what it expects of either first hole, which is less noisy than
            counting hits.

            | first hole of | hits, as the exact model expects | hits, counted | usable, as it expects | usable, counted |
            |---|---|---|---|---|
            | the exact model | {exact.Average(r => r.Predicted):.000} | {Share(exact, r => r.Ok)} | {exact.Average(r => r.Filler):.000} | {Share(exact, r => r.Usable)} |
            | the posterior | {ours.Average(r => r.Predicted):.000} | {Share(ours, r => r.Ok)} | {ours.Average(r => r.Filler):.000} | {Share(ours, r => r.Usable)} |


            """).ReplaceLineEndings("\n"));
    }

    private static void Stated(StringBuilder text, string title, List<SimulatorRow> rows)
    {
        if (rows.Count == 0) return;
        var report = Report(rows);
        List<SimulatorRow> sure = [.. rows.Where(r => r.Predicted >= 0.9)];
        text.Append(CultureInfo.InvariantCulture, $"## {title}\n\n{report.Count} statements: Brier {report.Brier:.000}, log score {report.LogScore:.000}, calibration error {report.CalibrationError:.000}. Where it says so with .90 or more ({sure.Count}) it is right in {Share(sure, r => r.Ok)}.\n\n");
    }

    private static void Wrong(StringBuilder text, List<SimulatorRow> rows)
    {
        List<SimulatorRow> wrong = [.. rows.Where(r => r.Scenario.StartsWith("wrong", StringComparison.Ordinal))];
        if (wrong.Count == 0) return;
        text.Append("## Noise rates wrong by a factor of two\n\nFalse solids and false hits twice, misses of taps and magnets twice what they are; then learned from holes.\n\n| holes learned | walls | first hole hits | holes | Brier | calibration error |\n|---|---|---|---|---|---|\n");
        foreach (string s in new[] { "wrong0", "wrong20", "wrong100" })
        {
            List<SimulatorRow> g = [.. wrong.Where(r => r.Scenario == s)];
            if (g.Count == 0) continue;
            var report = Report(g);
            text.Append(CultureInfo.InvariantCulture, $"| {s[5..]} | {g.Count} | {Share(g, r => r.Ok)} | {g.Average(r => r.Holes):0.00} | {report.Brier:.000} | {report.CalibrationError:.000} |\n");
        }
        text.Append('\n');
    }

    private static void Others(StringBuilder text, List<SimulatorRow> rows)
    {
        Table(text, rows, "dabs", "Dabs or studs?", "Half of the walls on dabs (grid of 300 to 600 mm, 30 mm off it, 60 to 140 mm wide), half on studs.", "word is right", r => r.Usable);
        Table(text, rows, "ceiling", "A ceiling whose joists may run either way", "One hole in a window of 640 x 640 mm from taps alone, along x and, where that tells little, along y.", "first hole hits", r => r.Ok);
        List<SimulatorRow> who = [.. rows.Where(r => r.Scenario == "identity")];
        if (who.Count == 0) return;
        text.Append("## What the wall is\n\nWalls drawn from the build-ups, a tenth of the taps saying anything. Right: a fixing chosen for the answer suits the wall. The rows of the exact law take the same\nreadings and choose by the law that the simulator makes them by (front and void summed over a grid): nobody can do better on them. So\nthe goal of .95 within .60 of the minutes lies beyond what these readings tell: the exact law itself does not reach it on the policy's readings, nor on\nthe whole routine's.\n\n| checks | walls | choice suits | the same, as the exact law expects | family right | minutes | checks done |\n|---|---|---|---|---|---|---|\n");
        foreach (var g in who.GroupBy(r => r.Fitter).OrderBy(g => g.Key, StringComparer.Ordinal)) text.Append(CultureInfo.InvariantCulture, $"| {g.Key} | {g.Count()} | {Share(g, r => r.Usable)} | {(g.Key.StartsWith("exact", StringComparison.Ordinal) ? $"{g.Average(r => r.Predicted):.000}" : "")} | {Share(g, r => r.Ok)} | {g.Average(r => r.Minutes):0.00} | {g.Average(r => r.Sweeps):0.0} |\n");
        text.Append('\n');
    }

    private static void Table(StringBuilder text, List<SimulatorRow> all, string scenario, string title, string what, string column, Func<SimulatorRow, bool> which)
    {
        List<SimulatorRow> rows = [.. all.Where(r => r.Scenario == scenario)];
        if (rows.Count == 0) return;
        text.Append(CultureInfo.InvariantCulture, $"## {title}\n\n{what}\n\n| | walls | {column} | Brier | calibration error |\n|---|---|---|---|---|\n");
        foreach (var g in rows.GroupBy(r => r.Fitter))
        {
            var report = Report([.. g]);
            string scores = report.Count == 0 ? " | " : string.Create(CultureInfo.InvariantCulture, $"{report.Brier:.000} | {report.CalibrationError:.000}");
            text.Append(CultureInfo.InvariantCulture, $"| {g.Key} | {g.Count()} | {(g.Key.StartsWith("joists", StringComparison.Ordinal) ? "" : Share(g, which))} | {scores} |\n");
        }
        text.Append('\n');
    }
}
