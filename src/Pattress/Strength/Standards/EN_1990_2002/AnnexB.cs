using Pattress.Working;

namespace Pattress.Strength.Standards.EN_1990_2002;

/// <summary>
/// EN 1990:2002+A1:2005, Table B2: least reliability index by class (RC1 to RC3) and reference period. The printed values are
/// taken, although for RC1 and RC3 the two periods do not follow (C.3) (decision on the flags).
/// </summary>
public static class AnnexB
{
    private const string Clause = "EN 1990:2002+A1:2005 Table B2";
    private static readonly StandardTable Classes = StandardTable.Read("en1990_table_b2");
    private static readonly double[] OneYear = Classes.Column("one_year"), FiftyYears = Classes.Column("fifty_years");

    internal static double beta(double reliability_class, double period, Trace? trace) =>
        trace.LookUp("beta", (period == 0 ? OneYear : FiftyYears)[(int)reliability_class], "", Clause);

    public static readonly Rule TargetIndex = new("en1990.b.target_index", "EN 1990", "2002+A1:2005", Clause, "Target reliability index", "",
        (x, t) => beta(x[0], x[1], t), Parameter.Choice("class", [.. Classes.Words]), Parameter.Choice("period", "one_year", "fifty_years"));
}
