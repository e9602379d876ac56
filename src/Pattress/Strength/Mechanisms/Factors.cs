using Pattress.Working;

namespace Pattress.Strength.Mechanisms;

/// <summary>How long a load acts, as EN 1995-1-1 sorts it.</summary>
public enum Duration { Permanent, Long, Medium, Short, Instantaneous }

/// <summary>State of the board.</summary>
public enum Dampness { Dry, Humid, Damp }

/// <summary>The factors and assumed values of <c>data/strength/factors.csv</c>, each on its own and with its source.</summary>
public static class Factors
{
    /// <summary>Partial factor on a variable action, EN 1990 (6.10): turns a design resistance into a permitted load.</summary>
    public const double OnAction = 1.5;

    private static readonly Dictionary<string, double> Values =
        CsvTable.FromEmbedded("data/strength/factors.csv").Rows.ToDictionary(r => r["key"], r => r.Number("value"), StringComparer.Ordinal);

    private static readonly double[] Durations = [Of("duration_permanent"), Of("duration_long"), Of("duration_medium"), Of("duration_short"), Of("duration_instantaneous")];
    private static readonly double[] Damps = [Of("damp_dry"), Of("damp_humid"), Of("damp_damp")];
    private static readonly double[] Creeps = [Of("creep_permanent"), Of("creep_long"), Of("creep_medium"), 1, 1];

    internal static double Of(string key) => Values[key];

    internal static double Value(string key, string symbol, string unit, Trace? trace) => trace.LookUp(symbol, Of(key), unit, "assumed: " + key);

    /// <summary>Board under a load that lasts.</summary>
    internal static double OnDuration(Duration duration, Trace? trace) => trace.LookUp("k_duration", Durations[(int)duration], "", "assumed: duration of load on board");

    /// <summary>Plastic plugs under a load that lasts.</summary>
    internal static double OnCreep(Duration duration, Trace? trace) => trace.LookUp("k_creep", Creeps[(int)duration], "", "assumed: creep of plastic plugs");

    internal static double OnDamp(Dampness damp, Trace? trace) => trace.LookUp("k_damp", Damps[(int)damp], "", "assumed: damp board");

    /// <summary>Mean of a lognormal strength from its 5 % fractile.</summary>
    internal static double Mean(double R_k, double V, Trace? trace) =>
        trace.Step("R_mean", R_k * Math.Exp(1.645 * V), "N", "lognormal, 5 % fractile", [In.Of(R_k), In.Of(V)], "R_k * Exp(1.645 * V)");
}
