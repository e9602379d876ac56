namespace Pattress.Planning.Repairs;

/// <summary>What is left where a fixing came away.</summary>
/// <param name="HoleMm">Widest of the hole that is there now, mm.</param>
/// <param name="Torn">The paper is torn beyond the hole.</param>
/// <param name="Crushed">The board is crushed or broken around it.</param>
public sealed record Remains(double HoleMm, bool Torn, bool Crushed)
{
    /// <summary>How far torn paper or crushed board counts beyond the hole, mm (assumed).</summary>
    public const double TornMm = 10, CrushedMm = 25;

    /// <summary>Width over which the board can no longer be trusted, mm.</summary>
    public double LostMm => HoleMm + (2 * (Crushed ? CrushedMm : Torn ? TornMm : 0));
}

/// <summary>A way to put it right: <c>bigger</c> (in the same hole), <c>move</c>, <c>shift</c> (the whole thing), <c>bridge</c> (a bearer plate behind the damage), <c>patch_wood</c>, <c>patch_masonry</c> or <c>open_up</c>; <c>elsewhere</c> where there is none.</summary>
/// <param name="Minutes">Work besides drilling and setting.</param>
/// <param name="WaitHours">Until filler or plaster may carry.</param>
/// <param name="Price">Materials besides fixings.</param>
public sealed record RepairWay(string Way, double Minutes, double WaitHours, decimal Price)
{
    /// <summary>A wider hole is no longer patched and drilled anew, mm (assumed).</summary>
    public const double WidestPatchMm = 30;

    private static readonly Dictionary<string, RepairWay> Rows = CsvTable.FromEmbedded("data/planning/repair.csv").Rows.ToDictionary(r => r["way"],
        r => new RepairWay(r["way"], r.Number("minutes"), r.Number("wait_hours"), (decimal)r.Number("price")), StringComparer.Ordinal);

    public static RepairWay Of(string way) => Rows[way];
}
