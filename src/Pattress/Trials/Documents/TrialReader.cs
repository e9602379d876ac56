using System.Globalization;
using Pattress.Quantities;

namespace Pattress.Trials.Documents;

/// <summary>
/// Reads a CSV of tests: a header with <c>kind</c> and <c>load_n</c> (a number in N, or text with a unit), optionally
/// <c>load_high_n</c> (the load is known only to lie between the two) and <c>outcome</c> (<c>failed</c>, the default, or
/// <c>stopped</c>); <c>load_kg</c> may stand for <c>load_n</c> where a mass was hung; <c>test</c> says tension, shear or cantilever, see
/// <see cref="TestColumns"/>; further columns are kept. Every fault is reported with its line, up to a hundred.
/// </summary>
internal sealed class TrialReader
{
    private const int MostRows = 1_000_000, MostKinds = 1000, MostProblems = 100, MostNotes = 20;
    private const double LargestN = 1e7;
    private readonly List<Problem> _problems = [];
    private readonly HashSet<string> _kinds = [];
    private int _kind = -1, _load = -1, _high = -1, _outcome = -1, _columns;
    private int[] _further = [];
    private bool _mass;
    private TestColumns _tests = TestColumns.None;
    private readonly List<string> _notes = [];

    public Outcome<TrialDocument> Read(string csv)
    {
        using var lines = new CsvLines(csv).Read().Where(IsRecord).GetEnumerator();
        if (!lines.MoveNext()) return Outcome<TrialDocument>.Refused(new Problem("trial_empty", "line 1", "", "a header line and at least one test"));
        Header(lines.Current);
        var tests = new List<TrialTest>();
        while (_kind >= 0 && _load >= 0 && lines.MoveNext() && _problems.Count < MostProblems)
        {
            if (tests.Count == MostRows) { Fault("trial_too_many", lines.Current.Line, "", "", $"at most {MostRows} tests"); break; }
            if (Test(lines.Current) is { } test) tests.Add(test);
        }
        if (_problems.Count == 0 && tests.Count == 0) Fault("trial_empty", 1, "", "", "at least one test below the header");
        if (_kinds.Count > MostKinds) Fault("trial_too_many", 1, "kind", $"{_kinds.Count}", $"at most {MostKinds} kinds");
        if (_problems.Count == 0 && TestColumns.Mixed(tests)) Fault("trial_mixed_loads", 1, "test", "", "tension alone, shear alone, or cantilever tests that all have arm and bracket beside tension");
        return _problems.Count > 0 ? Outcome<TrialDocument>.Refused(_problems) : Outcome<TrialDocument>.Of(new(_names, tests) { Notes = _notes });
    }

    /// <summary>Lines that begin with # are notes; the first few are kept, for whoever shows the series.</summary>
    private bool IsRecord(CsvLine line)
    {
        if (line.Broken || !line.Fields[0].StartsWith('#')) return true;
        if (_notes.Count < MostNotes) _notes.Add(string.Join(", ", line.Fields).TrimStart('#', ' '));
        return false;
    }

    private List<string> _names = [];

    private void Header(CsvLine header)
    {
        if (header.Broken) Fault("trial_bad_quote", header.Line, "", "", "quotes around whole fields, closed, doubled inside");
        _columns = header.Fields.Count;
        for (int i = 0; i < _columns; i++)
            if (header.Fields.IndexOf(header.Fields[i]) is var first && first < i)
                Fault("trial_column_twice", header.Line, header.Fields[i], header.Fields[i], "each column once");
        _mass = !header.Fields.Contains("load_n") && header.Fields.Contains("load_kg");
        (_kind, _load) = (Needed(header, "kind"), Needed(header, _mass ? "load_kg" : "load_n"));
        _tests = TestColumns.Of(header.Fields);
        (_high, _outcome) = (header.Fields.IndexOf("load_high_n"), header.Fields.IndexOf("outcome"));
        _further = [.. Enumerable.Range(0, _columns).Where(i => i != _kind && i != _load && i != _high && i != _outcome)];
        _names = [.. _further.Select(i => header.Fields[i])];
    }

    private int Needed(CsvLine header, string column)
    {
        int at = header.Fields.IndexOf(column);
        if (at < 0) Fault("trial_no_column", header.Line, column, string.Join(", ", header.Fields), $"a column named {column}");
        return at;
    }

    private TrialTest? Test(CsvLine line)
    {
        int before = _problems.Count;
        if (line.Broken) { Fault("trial_bad_quote", line.Line, "", "", "quotes around whole fields, closed, doubled inside"); return null; }
        if (line.Fields.Count != _columns) { Fault("trial_ragged", line.Line, "", $"{line.Fields.Count} fields", $"{_columns} fields, as in the header"); return null; }
        string kind = line.Fields[_kind];
        if (kind.Length is 0 or > 100) Fault("trial_no_kind", line.Line, "kind", kind, "a name of 1 to 100 characters");
        double load = Load(line, _load, _mass ? "load_kg" : "load_n");
        double? high = High(line, load);
        bool failed = Failed(line);
        if (!failed && high is not null) Fault("trial_outcome", line.Line, "outcome", "stopped", "failed, where an interval is given");
        if (_problems.Count > before) return null;
        _kinds.Add(kind);
        var test = new TrialTest(line.Line, kind, load, high, failed, [.. _further.Select(i => line.Fields[i])]);
        return _tests.Applied(test, line.Fields, (code, column, value, allowed) => Fault(code, line.Line, column, value, allowed));
    }

    private double? High(CsvLine line, double low)
    {
        if (_high < 0 || line.Fields[_high].Length == 0) return null;
        double high = Load(line, _high, "load_high_n");
        if (high > 0 && low > 0 && high <= low) Fault("trial_interval", line.Line, "load_high_n", line.Fields[_high], "more than load_n, or nothing");
        return high;
    }

    private bool Failed(CsvLine line)
    {
        string outcome = _outcome < 0 ? "" : line.Fields[_outcome];
        if (outcome is not ("" or "failed" or "stopped")) Fault("trial_outcome", line.Line, "outcome", outcome, "failed or stopped");
        return outcome != "stopped";
    }

    private double Load(CsvLine line, int column, string name)
    {
        string text = line.Fields[column];
        if (_mass && column == _load) return Hung(line.Line, text);
        if (!QuantityText.TryParseOrBare(text, Dimension.ForceN, out double load, out string code))
            Fault(code, line.Line, name, text, QuantityText.Allowed(Dimension.ForceN));
        else if (!(load > 0 && load <= LargestN))
            Fault("trial_load_range", line.Line, name, text, "above 0 and at most 10 MN");
        else return load;
        return 0;
    }

    /// <summary>A mass that was hung, as its weight.</summary>
    private double Hung(int line, string text)
    {
        if (!QuantityText.TryParseOrBare(text, Dimension.MassKg, out double mass, out string code)) Fault(code, line, "load_kg", text, QuantityText.Allowed(Dimension.MassKg));
        else if (!(mass > 0 && mass * Quantities.Units.Gravity <= LargestN)) Fault("trial_load_range", line, "load_kg", text, "above 0 and at most 10 MN of weight");
        else return mass * Quantities.Units.Gravity;
        return 0;
    }

    private void Fault(string code, int line, string column, string value, string allowed)
    {
        string path = string.Create(CultureInfo.InvariantCulture, $"line {line}");
        if (_problems.Count < MostProblems) _problems.Add(new(code, column.Length > 0 ? $"{path}, {column}" : path, value.Length > 80 ? value[..80] : value, allowed));
    }
}
