using Pattress.Working;

namespace Pattress.Strength.Standards.NDS_2018;

/// <summary>The yield modes as rules, each on its own and the least of them.</summary>
public static class Section12_3_Rules
{
    private const string Document = "NDS", Edition = "2018", Head = "NDS 2018 ";

    private delegate double Mode(in Yield joint, Trace? trace);

    private static readonly Parameter[] Inputs =
    [
        Input.Length("D", 1.5, 25.4), Input.Length("l_m", 1, 300), Input.Length("l_s", 1, 300), Input.Stress("F_em", 1, 700), Input.Stress("F_es", 1, 700), Input.Stress("F_yb", 100, 2000),
        Input.Angle("theta", 0, 90, 0), Input.Length("D_nominal", 0, 25.4, 0),
    ];

    private static Rule Of(string mode, string title, Mode function) => new(
        "nds.12_3." + mode, Document, Edition, Head + "12.3.1", title, "N", (x, t) => function(new Yield(x[0], x[1], x[2], x[3], x[4], x[5], x[6], x[7]), t), Inputs);

    public static readonly Rule Lateral = Of("lateral", "Lateral design value in single shear", Section12_3.Z);

    public static readonly Rule Bearing = new("nds.12_3.dowel_bearing", Document, Edition, Head + "Table 12.3.3", "Dowel bearing strength for D below 1/4 in", "N/mm²",
        (x, t) => Section12_3.F_e(x[0], t), Input.Number("G", 0.31, 0.73));

    public static readonly Rule LargeBearing = new("nds.12_3.dowel_bearing_large", Document, Edition, Head + "Table 12.3.3 (12.3-11)", "Dowel bearing strength for D of 1/4 in and more, at an angle to the grain", "N/mm²",
        (x, t) => Section12_3.F_e_theta(x[0], x[1], x[2], t), Input.Number("G", 0.31, 0.73), Input.Length("D", 6.35, 25.4), Input.Angle("theta", 0, 90, 0));

    internal static readonly Rule[] All =
    [
        Lateral, Bearing, LargeBearing,
        Of("mode_i_m", "Mode I, main member", (in y, t) => Section12_3.I_m(y, Section12_3.R_d(y, Section12_3.ModeI, t), t)),
        Of("mode_i_s", "Mode I, side member", (in y, t) => Section12_3.I_s(y, Section12_3.R_d(y, Section12_3.ModeI, t), t)),
        Of("mode_ii", "Mode II", (in y, t) => Section12_3.II(y, Section12_3.R_e(y, t), Section12_3.R_d(y, Section12_3.ModeII, t), t)),
        Of("mode_iii_m", "Mode III, main member", (in y, t) => Section12_3.III_m(y, Section12_3.R_e(y, t), Section12_3.R_d(y, Section12_3.ModeIII, t), t)),
        Of("mode_iii_s", "Mode III, side member", (in y, t) => Section12_3.III_s(y, Section12_3.R_e(y, t), Section12_3.R_d(y, Section12_3.ModeIII, t), t)),
        Of("mode_iv", "Mode IV", (in y, t) => Section12_3.IV(y, Section12_3.R_e(y, t), Section12_3.R_d(y, Section12_3.ModeIII, t), t)),
    ];
}
