namespace Pattress.Planning.Programs;

/// <summary>
/// Takes out of a program what must be paid whatever is chosen. Where a row says that a sum of unknowns, each counted positively, is just n, each of them
/// costs at least some price for what it adds to the sum: n times the least such price is paid in any case. What is left is smaller, so that a solver's
/// relative tolerances mean less.
/// </summary>
public static class Unavoidable
{
    /// <summary>The program with its costs lessened, and by how much every solution of it is cheaper.</summary>
    public static (IntegerProgram Program, double Spared) Spared(IntegerProgram program)
    {
        double[] costs = [.. program.Unknowns.Select(u => u.Cost)];
        double spared = 0;
        foreach (var row in program.Rows.Where(r => r.Lower == r.Upper && r.Terms.Count > 0 && r.Terms.All(t => t.Times > 0)))
        {
            // Whole costs stay whole.
            double least = Math.Floor(row.Terms.Min(t => costs[t.Unknown] / t.Times));
            foreach (var t in row.Terms) costs[t.Unknown] -= least * t.Times;
            spared += least * row.Lower;
        }

        return (program with { Unknowns = [.. program.Unknowns.Select((u, i) => u with { Cost = costs[i] })] }, spared);
    }
}
