using Pattress.Fixings;
using Pattress.Jobs;

namespace Pattress.Planning;

/// <summary>Which of a plate's holes are used: all, the top row, or the top one alone; in that order.</summary>
public static class Patterns
{
    private const double RowMm = 2;

    /// <summary>Sets of hole indices to try, most holes first, without repeats.</summary>
    public static IReadOnlyList<IReadOnlyList<int>> Of(IReadOnlyList<Point> holes, IReadOnlyList<int> among)
    {
        var sets = new List<IReadOnlyList<int>> { among };
        double top = among.Max(i => holes[i].Y);
        var row = among.Where(i => holes[i].Y > top - RowMm).ToList();
        Add(sets, row);
        Add(sets, [row.OrderBy(i => Math.Abs(holes[i].X)).ThenBy(i => holes[i].X).First()]);
        return sets;
    }

    /// <summary>Why two of these holes would foul each other with this size, or null.</summary>
    public static Reason? Foul(FixingSize size, IReadOnlyList<Point> used) => used.Count < 2 ? null : Neighbours.Foul(size, used);

    private static void Add(List<IReadOnlyList<int>> sets, IReadOnlyList<int> set)
    {
        if (!sets.Any(s => s.SequenceEqual(set))) sets.Add(set);
    }
}
