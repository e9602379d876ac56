using Pattress.Working;

namespace Pattress.Strength.Standards.EN_338_2016;

/// <summary>EN 338:2016, Tables 1 and 3: densities of softwood (C) and of some hardwood (D) classes, kg/m³. Several differ from the 2009 edition.</summary>
public static class Table1
{
    private static readonly StandardTable Classes = StandardTable.Read("en338_density");
    private static readonly double[] Characteristic = Classes.Column("rho_k"), Mean = Classes.Column("rho_mean");

    internal static double rho_k(double strength_class, Trace? trace) => trace.LookUp("rho_k", Characteristic[(int)strength_class], "kg/m³", "EN 338:2016 Table 1");

    internal static double rho_mean(double strength_class, Trace? trace) => trace.LookUp("rho_mean", Mean[(int)strength_class], "kg/m³", "EN 338:2016 Table 1");

    public static readonly Rule CharacteristicDensity = new("en338.table_1.rho_k", "EN 338", "2016", "EN 338:2016 Table 1",
        "Characteristic density of a strength class", "kg/m³", (x, t) => rho_k(x[0], t), Parameter.Choice("class", [.. Classes.Words]));

    public static readonly Rule MeanDensity = new("en338.table_1.rho_mean", "EN 338", "2016", "EN 338:2016 Table 1",
        "Mean density of a strength class", "kg/m³", (x, t) => rho_mean(x[0], t), Parameter.Choice("class", [.. Classes.Words]));

    public static IReadOnlyList<Rule> Rules => [CharacteristicDensity, MeanDensity];
}
