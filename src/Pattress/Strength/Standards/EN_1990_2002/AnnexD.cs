using Pattress.Trials.Special;
using Pattress.Trials.Standards;
using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.EN_1990_2002;

/// <summary>EN 1990:2002+A1:2005, Annex D.7: a value from tests, by the printed tables or by the formula behind them (several entries lie below it).</summary>
public static class AnnexD
{
    private const string Document = "EN 1990", Edition = "2002+A1:2005", Head = "EN 1990:2002+A1:2005 ";

    private static RuleResult Factor(ReadOnlySpan<double> x, bool design, Trace? trace)
    {
        string table = Head + (design ? "Table D2" : "Table D1");
        int n = (int)x[0];
        var scatter = x[1] == 0 ? Scatter.Known : Scatter.Unknown;
        var basis = x[2] == 0 ? Basis.Table : Basis.Formula;
        if ((design ? En1990_2002_AnnexD.Design(n, scatter, basis) : En1990_2002_AnnexD.Characteristic(n, scatter, basis)).Value is not { } k) return new NotCovered(table, "no_entry", Said.Words("n = " + n));
        if (basis == Basis.Table) return trace.LookUp("k_n", k.Value, "", table);
        return ByFormula(n, scatter, design ? 0.999 : 0.95, table, trace);
    }

    private static double ByFormula(double n, Scatter scatter, double exceeded, string table, Trace? trace)
    {
        double u = scatter == Scatter.Known
            ? trace.LookUp("u", Normal.Quantile(exceeded), "", table + ", normal law")
            : trace.LookUp("u", StudentT.Quantile(exceeded, n - 1), "", table + ", Student's law");
        return trace.Step("k_n", u * Sqrt(1 + 1 / n), "", table + ", formula", [In.Of(u), In.Of(n)]);
    }

    /// <summary>(D.1), D.7.2: m less k_n times the scatter; V the coefficient of variation.</summary>
    internal static double X_k(double m, double V, double k_n, Trace? trace) => trace.Step("X_k", m * (1 - k_n * V), "N", Head + "D.7.2 (D.1)", [In.Of(m), In.Of(V), In.Of(k_n)]);

    /// <summary>D.7.2(3): the same by logarithms; m_y, s_y mean and deviation of ln X.</summary>
    internal static double X_k_log(double m_y, double s_y, double k_n, Trace? trace) => trace.Step("X_k", Exp(m_y - k_n * s_y), "N", Head + "D.7.2(3)", [In.Of(m_y), In.Of(s_y), In.Of(k_n)]);

    private static readonly Parameter[] Inputs = [Input.Count("n", 1e5), Parameter.Choice("scatter", "known", "unknown"), Parameter.Choice("basis", "table", "formula") with { Default = 0 }];

    public static readonly Rule Characteristic = new("en1990.d.k_n", Document, Edition, Head + "Table D1", "Factor k_n for a 5 % characteristic value from n tests", "", (x, t) => Factor(x, false, t), Inputs);

    public static readonly Rule Design = new("en1990.d.k_d_n", Document, Edition, Head + "Table D2", "Factor k_d,n for a design value from n tests", "", (x, t) => Factor(x, true, t), Inputs);

    public static readonly Rule Value = new("en1990.d.x_k_normal", Document, Edition, Head + "D.7.2 (D.1)", "Value from tests, normal law", "N",
        (x, t) => x[1] * x[2] >= 1 ? new NotCovered(Head + "D.7.2", "no_entry", Said.Words("V")) : X_k(x[0], x[1], x[2], t), Input.Force("m", 1e-3), Input.Number("V", 0, 1), Input.Number("k_n", 0, 100));

    public static readonly Rule LogValue = new("en1990.d.x_k_lognormal", Document, Edition, Head + "D.7.2(3)", "Value from tests, lognormal law", "N",
        (x, t) => X_k_log(x[0], x[1], x[2], t), Input.Number("m_y", -20, 20), Input.Number("s_y", 0, 2), Input.Number("k_n", 0, 100));

    public static IReadOnlyList<Rule> Rules => [Characteristic, Design, Value, LogValue];
}
