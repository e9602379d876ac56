using Pattress.Working;

namespace Pattress.Strength.Standards.NDS_2018;

/// <summary>NDS 2018 Table I1: bending yield strength of nails, wood screws, lag screws and bolts by diameter (mm), N/mm²; from memory.</summary>
public static class AppendixI
{
    private const string Document = "NDS", Edition = "2018", Head = "NDS 2018 ";
    private static readonly StandardTable Table = StandardTable.Read("nds_bending_yield");
    private static readonly double[] UpTo = Table.Column("to_in"), Strength = Table.Column("f_yb_psi");

    internal static double F_yb(double D, Trace? trace)
    {
        int row = 0;
        while (row < UpTo.Length - 1 && D > UpTo[row] * 25.4) row++;
        double F_psi = trace.LookUp("F_psi", Strength[row], "psi", Head + "Table I1, row " + Table.Words[row]);
        return trace.Step("F_yb", F_psi * 0.0068947572931683613, "N/mm²", Head + "Table I1", [In.Of(F_psi)]);
    }

    public static readonly Rule BendingYield = new("nds.i_1.bending_yield", Document, Edition, Head + "Table I1", "Bending yield strength of nails, wood screws, lag screws and bolts", "N/mm²",
        (x, t) => F_yb(x[0], t), Input.Length("D", 2.51, 25.4));

    public static IReadOnlyList<Rule> Rules => [BendingYield];
}
