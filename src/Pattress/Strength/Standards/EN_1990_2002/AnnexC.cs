using Pattress.Trials.Reliability;
using Pattress.Trials.Special;
using Pattress.Working;
using static System.Math;

namespace Pattress.Strength.Standards.EN_1990_2002;

/// <summary>EN 1990:2002+A1:2005, Annex C: probability of failure by the reliability index, the index over several years, and design values of actions and resistances.</summary>
public static class AnnexC
{
    private const string Document = "EN 1990", Edition = "2002+A1:2005", Head = "EN 1990:2002+A1:2005 ";

    /// <summary>(C.1): P_f = Phi(-beta).</summary>
    internal static double P_f(double beta, Trace? trace) => trace.LookUp("P_f", Normal.UpperTail(beta), "", Head + "(C.1), normal law");

    /// <summary>(C.3): the index over n years (or other independent trials) from that of one.</summary>
    internal static double beta_n(double beta_1, double n, Trace? trace) => trace.LookUp("beta_n", SeriesSystem.Repeated(beta_1, (int)n), "", Head + "(C.3), normal law");

    /// <summary>C.7, Table C3: a resistance at its design point over its mean, with the small-variation form for a lognormal law.</summary>
    internal static double Resistance(double law, double alpha_R, double beta, double V, Trace? trace) => law == 0
        ? trace.Step("r_d", 1 - alpha_R * beta * V, "", Head + "Table C3", [In.Of(alpha_R), In.Of(beta), In.Of(V)])
        : trace.Step("r_d", Exp(-alpha_R * beta * V), "", Head + "Table C3", [In.Of(alpha_R), In.Of(beta), In.Of(V)]);

    public static readonly Rule Failure = new("en1990.c.p_f", Document, Edition, Head + "(C.1) Table C1", "Probability of failure by the reliability index", "", (x, t) => P_f(x[0], t), Input.Number("beta", -8, 30));

    public static readonly Rule OverYears = new("en1990.c.beta_n", Document, Edition, Head + "(C.3)", "Reliability index over several years", "",
        (x, t) => beta_n(x[0], x[1], t), Input.Number("beta_1", 0, 8), Input.Count("n", 1000));

    public static readonly Rule DesignPoint = new("en1990.c.design_resistance", Document, Edition, Head + "C.7 Table C3", "Design value of a resistance over its mean", "",
        (x, t) => Resistance(x[0], x[1], x[2], x[3], t), Parameter.Choice("law", "normal", "lognormal"), Input.Number("alpha_R", 0, 1, 0.8), Input.Number("beta", 0, 8, 3.8), Input.Number("V", 0, 0.3));

    public static IReadOnlyList<Rule> Rules => [Failure, OverYears, DesignPoint];
}
