using System.Globalization;
using System.Text;

namespace Pattress.Planning.Programs;

/// <summary>A program in the LP format that many solvers read. Unknowns are written x0, x1, … in their order.</summary>
public static class LpText
{
    public static string Write(IntegerProgram program)
    {
        var text = new StringBuilder("Minimize\n obj:");
        Terms(text, program.Unknowns.Select((u, i) => new Term(i, u.Cost)).Where(t => t.Times != 0));
        if (program.Unknowns.All(u => u.Cost == 0)) text.Append(" 0 x0");
        text.Append("\nSubject To\n");
        for (int r = 0; r < program.Rows.Count; r++) WriteRow(text, r, program.Rows[r]);
        text.Append("Bounds\n");
        for (int i = 0; i < program.Unknowns.Count; i++) WriteBounds(text, i, program.Unknowns[i]);
        text.Append("General\n");
        for (int i = 0; i < program.Unknowns.Count; i++) if (program.Unknowns[i].Whole) text.Append(" x").Append(i).Append('\n');
        return text.Append("End\n").ToString();
    }

    private static void WriteRow(StringBuilder text, int index, Row row)
    {
        if (row.Lower == row.Upper) One(text, $" r{index}:", row, "=", row.Lower);
        else
        {
            if (double.IsFinite(row.Lower)) One(text, $" r{index}a:", row, ">=", row.Lower);
            if (double.IsFinite(row.Upper)) One(text, $" r{index}b:", row, "<=", row.Upper);
        }
    }

    private static void One(StringBuilder text, string name, Row row, string sign, double bound)
    {
        text.Append(name);
        Terms(text, row.Terms);
        text.Append(' ').Append(sign).Append(' ').Append(Number(bound)).Append('\n');
    }

    private static void WriteBounds(StringBuilder text, int index, Unknown u)
    {
        text.Append(' ').Append(Number(u.Lower)).Append(" <= x").Append(index);
        if (double.IsFinite(u.Upper)) text.Append(" <= ").Append(Number(u.Upper));
        text.Append('\n');
    }

    // Lines are kept short: some readers stop at 510 letters.
    private static void Terms(StringBuilder text, IEnumerable<Term> terms)
    {
        int on = 0;
        foreach (var term in terms)
        {
            if (on++ % 12 == 11) text.Append("\n ");
            text.Append(term.Times < 0 ? " - " : " + ").Append(Number(Math.Abs(term.Times))).Append(" x").Append(term.Unknown);
        }
    }

    private static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
