using Pattress.Trials.Statistics;

namespace Pattress.Trials.Documents;

/// <summary>What a column of conditions does to the loads of a file.</summary>
/// <param name="Column">One of board, board_mm, moisture, damp, void_mm, temperature_c, age.</param>
/// <param name="Counts">True for the one column that the kinds taken together were freed from.</param>
public sealed record ColumnEffect(string Column, LevelEffect Effect, bool Counts);

/// <summary>Board, damp, void and the like as effects, where the file has them and its tests can tell them apart.</summary>
internal sealed class ConditionEffects
{
    private static readonly string[] Columns = ["board", "board_mm", "moisture", "damp", "void_mm", "temperature_c", "age"];

    private readonly int _column = -1;
    private readonly Dictionary<string, double> _shifts = [];

    public ConditionEffects(TrialDocument document)
    {
        var found = Columns.Where(c => document.FurtherColumns.Contains(c)).Select(c => (Column: c, Effects: Of(document, c))).ToList();
        // One column alone: two that change together would be counted twice.
        var strongest = found.Where(f => f.Effects.Any(e => e.Decided)).OrderByDescending(f => f.Effects.Max(e => Math.Abs(e.LogRatio) / e.StandardError)).FirstOrDefault();
        All = [.. found.SelectMany(f => f.Effects.Select(e => new ColumnEffect(f.Column, e, f.Column == strongest.Column)))];
        if (strongest.Effects is null) return;
        _column = IndexOf(document, strongest.Column);
        foreach (var e in strongest.Effects) _shifts[e.Level] = e.LogRatio;
    }

    public IReadOnlyList<ColumnEffect> All { get; }

    /// <summary>What the condition of a test added to the logarithm of its load, against the most common level.</summary>
    public double Shift(TrialTest test) => _column < 0 ? 0 : _shifts.GetValueOrDefault(test.Further[_column]);

    private static IReadOnlyList<LevelEffect> Of(TrialDocument document, string column)
    {
        int at = IndexOf(document, column);
        return Conditions.Effects([.. document.Tests.Where(t => t.Further[at].Length > 0).Select(t => new UnderCondition(t.Kind, t.Further[at], Math.Log(t.CountedN)))]);
    }

    private static int IndexOf(TrialDocument document, string column) => document.FurtherColumns.Select((c, i) => (c, i)).First(p => p.c == column).i;
}
