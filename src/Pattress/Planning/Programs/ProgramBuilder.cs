namespace Pattress.Planning.Programs;

/// <summary>Collects the unknowns and rows of a program; knows its unknowns by name.</summary>
public sealed class ProgramBuilder
{
    private readonly List<Unknown> _unknowns = [];
    private readonly List<Row> _rows = [];
    private readonly Dictionary<string, int> _byName = new(StringComparer.Ordinal);

    /// <summary>Adds an unknown and gives its index.</summary>
    public int Add(string name, double upper, bool whole, double cost)
    {
        _byName.Add(name, _unknowns.Count);
        _unknowns.Add(new(name, 0, upper, whole, cost));
        return _unknowns.Count - 1;
    }

    /// <summary>Index of an unknown, or null when there is none of that name.</summary>
    public int? Find(string name) => _byName.TryGetValue(name, out int index) ? index : null;

    /// <summary>The sum of terms is at least this.</summary>
    public void AtLeast(string name, double least, params IReadOnlyList<Term> terms) => _rows.Add(new(name, terms, least, double.PositiveInfinity));

    /// <summary>The sum of terms is at most this.</summary>
    public void AtMost(string name, double most, params IReadOnlyList<Term> terms) => _rows.Add(new(name, terms, double.NegativeInfinity, most));

    /// <summary>The sum of terms is just this.</summary>
    public void Just(string name, double sum, params IReadOnlyList<Term> terms) => _rows.Add(new(name, terms, sum, sum));

    public IntegerProgram Build() => new([.. _unknowns], [.. _rows]);
}
