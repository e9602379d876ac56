using System.Globalization;
using System.Text;
using Pattress.Fixings;
using Pattress.Planning.Resisting;
using Pattress.Trials.Documents;
using Pattress.Trials.Statistics;

namespace Pattress.Jobs.Certain;

/// <summary>How the tests of one size stand while they are being made.</summary>
/// <param name="Count">Tests so far; those taken back do not count.</param>
/// <param name="MeanN">Mean load (N).</param>
/// <param name="SdN">Standard deviation; null for one test.</param>
/// <param name="LowestN">Lowest load (N).</param>
/// <param name="CharacteristicN">What one in twenty stays below, at 75 % confidence; null with fewer than two tests.</param>
/// <param name="Says">Whether a plan may rest on them, and how many are missing.</param>
public sealed record RunningResult(string Fixing, string Load, int Count, double MeanN, double? SdN, double LowestN, double? CharacteristicN, Reason Says);

/// <summary>The user's own tests as a series: running results, the whole answer, in and out as CSV.</summary>
public static class OwnSeries
{
    private static readonly string[] Moistures = ["dry", "damp", "fresh_plaster", "unknown"], Wheres = ["bench", "site"], Modes = ["board", "slid", "fixing", "screw", "unknown"];

    /// <summary>A result for each size and kind of load that was tested, in the order of their first test.</summary>
    public static IReadOnlyList<RunningResult> Running(Job job) =>
        [.. job.Trials.Where(t => !t.Withdrawn && !OnlyHeld(t)).GroupBy(t => (t.Fixing, t.Load)).Select(g => Running(g.Key.Fixing, g.Key.Load, [.. g]))];

    /// <summary>A pull on site that was never meant to break: it says that one held, and nothing of the mean.</summary>
    private static bool OnlyHeld(OwnTest t) => t is { Where: "site", Outcome: "stopped" };

    private static RunningResult Running(string fixing, string load, IReadOnlyList<OwnTest> tests)
    {
        double[] loads = [.. tests.Select(t => t.LoadN)];
        var s = Summary.Of(loads);
        double? low = loads.Length < 2 ? null : Characteristic.Value(loads, ToleranceFactor.ScatterUnknown(loads.Length, 0.95, 0.75), StrengthLaw.Lognormal);
        int known = tests.Count(t => t.BoardMm is not null), missing = OwnTrials.Enough - known;
        var says = missing > 0 ? new Reason("own_tests_missing", Said.Count(missing)) : new Reason("own_tests_enough");
        return new(fixing, load, loads.Length, s.Mean, s.StandardDeviation, loads.Min(), low, says);
    }

    /// <summary>All tests of one kind of load worked out together; null when there are none.</summary>
    /// <param name="load"><c>tension</c> or <c>shear</c>.</param>
    public static TrialAnswer? Answer(Job job, string load)
    {
        List<TrialTest> tests = [.. job.Trials.Where(t => !t.Withdrawn && t.Load == load).Select((t, i) => new TrialTest(i + 2, t.Fixing, t.LoadN, null, t.Outcome == "failed", Further(t)))];
        return tests.Count == 0 ? null : Analysis.Of(new(Columns, tests), new()).Value;
    }

    private static readonly string[] Columns = ["load", "board_mm", "moisture", "where", "mode", "on", "note"];

    private static string[] Further(OwnTest t) => [t.Load, t.BoardMm?.ToString(CultureInfo.InvariantCulture) ?? "", t.Moisture, t.Where, t.Mode, t.On, t.Note];

    /// <summary>The tests as CSV that <see cref="Read"/> and <c>pattress trial</c> take.</summary>
    public static string Csv(Job job)
    {
        var csv = new StringBuilder("kind,load_n,outcome,").AppendJoin(',', Columns).Append('\n');
        foreach (var t in job.Trials.Where(t => !t.Withdrawn))
            csv.AppendJoin(',', new[] { t.Fixing, t.LoadN.ToString("R", CultureInfo.InvariantCulture), t.Outcome }.Concat(Further(t)).Select(Cell)).Append('\n');
        return csv.ToString();
    }

    private static string Cell(string text) => text.AsSpan().IndexOfAny(",\"\n\r") < 0 ? text : $"\"{text.Replace("\"", "\"\"")}\"";

    /// <summary>
    /// Tests from CSV: <c>kind</c> is a size of the catalogue, <c>load_n</c> as in <c>pattress trial</c>; of the columns that <see cref="Csv"/>
    /// writes each may be there. A cantilever test with arm and bracket comes in as the pull on its fixing, one without is refused.
    /// </summary>
    /// <param name="newId">Makes an id for each test.</param>
    public static Outcome<IReadOnlyList<OwnTest>> Read(string csv, Func<string> newId)
    {
        var read = TrialDocument.Read(csv);
        if (read.Value is not { } document) return Outcome<IReadOnlyList<OwnTest>>.Refused(read.Problems);
        var problems = document.Tests.Select(Fault).OfType<Problem>().Take(100).ToList();
        return problems.Count > 0 ? Outcome<IReadOnlyList<OwnTest>>.Refused(problems) : Outcome<IReadOnlyList<OwnTest>>.Of([.. document.Tests.Select(t => Test(t, document.FurtherColumns, newId()))]);
    }

    private static Problem? Fault(TrialTest t)
    {
        string path = string.Create(CultureInfo.InvariantCulture, $"line {t.Line}, kind");
        if (FixingCatalogue.FromEmbedded.Find(t.Kind) is null) return new("unknown_fixing", path, t.Kind, "kind and size of the catalogue, e.g. strap_toggle.medium");
        return t.In == TestedIn.OrderOfMerit ? new("own_tests_merit", path, "", "a pull or a shear, or a cantilever test with arm and bracket") : null;
    }

    private static OwnTest Test(TrialTest t, IReadOnlyList<string> columns, string id)
    {
        string Of(string column) => columns.IndexOf(column) is var i and >= 0 ? t.Further[i] : "";
        string Word(string column, string[] words, string usual) => words.Contains(Of(column)) ? Of(column) : usual;
        bool shear = t.In == TestedIn.Shear || Of("load") == "shear";
        return new()
        {
            Id = id, Fixing = t.Kind, Load = shear ? "shear" : "tension", LoadN = t.LoadN, Outcome = t.Failed ? "failed" : "stopped",
            BoardMm = double.TryParse(Of("board_mm"), NumberStyles.Float, CultureInfo.InvariantCulture, out double mm) && mm is >= 3 and <= 100 ? mm : null,
            Moisture = Word("moisture", Moistures, "unknown"), Where = Word("where", Wheres, "bench"), Mode = Word("mode", Modes, "unknown"), On = Date(Of("on")), Note = Clean(Of("note")),
        };
    }

    private static string Date(string text) => DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _) ? text : "";

    private static string Clean(string text) => new([.. text.Where(c => !char.IsControl(c)).Take(400)]);

    private static int IndexOf(this IReadOnlyList<string> list, string item)
    {
        for (int i = 0; i < list.Count; i++) if (list[i] == item) return i;
        return -1;
    }
}
