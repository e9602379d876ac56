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

    /// <summary>What the clause of a step begins with whose number nobody measured; the key follows, and <c>number.</c> and the key have a name.</summary>
    public const string Assumed = "assumed: ";

    private static readonly double[] Durations = [Of("duration_permanent"), Of("duration_long"), Of("duration_medium"), Of("duration_short"), Of("duration_instantaneous")];
    private static readonly double[] Damps = [Of("damp_dry"), Of("damp_humid"), Of("damp_damp")];
    private static readonly double[] Creeps = [Of("creep_permanent"), Of("creep_long"), Of("creep_medium"), 1, 1];

    private static readonly Dictionary<string, string> Sources =
        CsvTable.FromEmbedded("data/strength/factors.csv").Rows.ToDictionary(r => r["key"], r => r["source"], StringComparer.Ordinal);

    internal static double Of(string key) => Values[key];

    /// <summary>Where the number comes from; <c>assumed</c> where the table says no more.</summary>
    internal static string Source(string key) => Sources.GetValueOrDefault(key, "assumed");

    internal static double Value(string key, string symbol, string unit, Trace? trace) => trace.LookUp(symbol, Of(key), unit, Assumed + key);

    /// <summary>Board under a load that lasts.</summary>
    internal static double OnDuration(Duration duration, Trace? trace) => trace.LookUp("k_duration", Durations[(int)duration], "", Assumed + "duration");

    /// <summary>Plastic plugs under a load that lasts.</summary>
    internal static double OnCreep(Duration duration, Trace? trace) => trace.LookUp("k_creep", Creeps[(int)duration], "", Assumed + "creep");

    internal static double OnDamp(Dampness damp, Trace? trace) => trace.LookUp("k_damp", Damps[(int)damp], "", Assumed + "damp");

    /// <summary>Mean of a lognormal strength from its 5 % fractile.</summary>
    internal static double Mean(double R_k, double V, Trace? trace) =>
        trace.Step("R_mean", R_k * Math.Exp(1.645 * V), "N", "lognormal, 5 % fractile", [In.Of(R_k), In.Of(V)], "R_k * Exp(1.645 * V)");
}
