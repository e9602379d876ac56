using Pattress.Fixings;

namespace Pattress.Planning;

/// <summary>An interval of a stiffness nobody has measured.</summary>
public readonly record struct Interval(double Low, double High);

/// <summary>Assumed stiffness intervals, from <c>data/planning/stiffness.csv</c>.</summary>
public static class StiffnessData
{
    private static readonly Dictionary<string, Interval> Rows = CsvTable.FromEmbedded("data/planning/stiffness.csv").Rows
        .ToDictionary(r => r["id"], r => new Interval(r.Number("low"), r.Number("high")), StringComparer.Ordinal);

    private static readonly string[] HoldsByNames = ["friction", "plug", "wings", "thread_wood", "thread_steel", "thread_plug", "sleeve"];

    /// <summary>Modulus of the foam of a laminate, N/mm².</summary>
    public static Interval Foam => Rows["foam"];

    /// <summary>Axial stiffness of a fixing, N/mm.</summary>
    public static Interval Fixing(HoldsBy holdsBy) => Rows[HoldsByNames[(int)holdsBy]];

    /// <summary>Stiffness of the wall under a bracket, N/mm³, by base material; of gypsum board that of one board of 12.5 mm.</summary>
    public static Interval Bed(string baseMaterial) => Rows[baseMaterial];

    /// <summary>Stiffness of the wall under a bracket, N/mm³; of gypsum board by its own thickness, boards and foam (<see cref="BoardBed"/>).</summary>
    public static Interval Bed(Spot spot) => spot.Base == "gypsum_board" && spot.Face.Mean > 0 ? BoardBed.Of(spot) : Bed(spot.Base);
}
