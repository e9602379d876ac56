using Pattress.Trials.Special;

namespace Pattress.Trials.Standards;

/// <summary>
/// EN 1990:2002 Annex D.7: factors k_n (5 % fractile, Table D1) and k_d,n (design value, Table D2). The tables' values were
/// not checked against the printed document; several lie below their own formula, so the basis is the caller's choice.
/// </summary>
public static class En1990_2002_AnnexD
{
    /// <summary>Stands for an unlimited number of tests.</summary>
    public const int Unlimited = int.MaxValue;

    private static readonly Lazy<IReadOnlyList<CsvTable.Row>> Rows = new(() => CsvTable.FromEmbedded("data/trials/en1990_annex_d.csv").Rows);

    /// <summary>Table D1: k_n = u sqrt(1 + 1/n) with V_X known, t sqrt(1 + 1/n) unknown, for the 5 % fractile.</summary>
    /// <param name="n">Number of tests: 1 or more with known scatter, 3 or more with unknown. Between rows the row below is taken, which is safe.</param>
    public static Outcome<KFactor> Characteristic(int n, Scatter scatter, Basis basis) =>
        basis == Basis.Table ? FromTable("D1", n, scatter) : FromFormula("D1", n, scatter, 0.95, 3);

    /// <summary>Table D2: the design value directly, P = 0.1 %; 4 or more tests with unknown scatter.</summary>
    public static Outcome<KFactor> Design(int n, Scatter scatter, Basis basis) =>
        basis == Basis.Table ? FromTable("D2", n, scatter) : FromFormula("D2", n, scatter, 0.999, 4);

    private static Outcome<KFactor> FromFormula(string table, int n, Scatter scatter, double exceeded, int leastUnknown)
    {
        string clause = $"EN 1990:2002 Annex D, Table {table}, formula";
        int least = scatter == Scatter.Known ? 1 : leastUnknown;
        if (n < least) return KFactor.NotCovered(n, clause, $"{least} tests or more");
        double u = n == Unlimited || scatter == Scatter.Known ? Normal.Quantile(exceeded) : StudentT.Quantile(exceeded, n - 1);
        return KFactor.Of(u * Math.Sqrt(1 + 1.0 / n), clause);
    }

    private static Outcome<KFactor> FromTable(string table, int n, Scatter scatter)
    {
        string clause = $"EN 1990:2002 Annex D, Table {table}", column = scatter == Scatter.Known ? "known" : "unknown";
        var row = Rows.Value.LastOrDefault(r => r["table"] == table && Number(r["n"]) <= n && r[column].Length > 0);
        return row is null
            ? KFactor.NotCovered(n, clause, scatter == Scatter.Known ? "1 test or more" : "3 tests or more in D1, 4 in D2")
            : KFactor.Of(row.Number(column), clause);
    }

    private static int Number(string n) => n == "inf" ? Unlimited : int.Parse(n, System.Globalization.CultureInfo.InvariantCulture);
}
