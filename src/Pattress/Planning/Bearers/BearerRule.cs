namespace Pattress.Planning.Bearers;

/// <summary>Timber between brackets and wall: <c>batten</c> on the face, <c>noggin</c> or <c>pattress</c> (board) behind the board.</summary>
/// <param name="ThicknessMm">At a right angle to the wall.</param>
/// <param name="WidthMm">Up the wall.</param>
/// <param name="BendingMpa">Characteristic bending strength, N/mm².</param>
/// <param name="PricePerM">Price of a metre (invented).</param>
/// <param name="Minutes">Work on the piece, opening up and making good included (assumed).</param>
/// <param name="MinutesPerM">Work on each metre besides (assumed).</param>
/// <param name="WaitHours">Until filler or plaster has dried (assumed).</param>
/// <param name="Behind">The wall is opened up for it.</param>
public sealed record BearerRule(
    string Kind, double ThicknessMm, double WidthMm, double BendingMpa, decimal PricePerM, double Minutes, double MinutesPerM, double WaitHours, bool Behind)
{
    /// <summary>All kinds, in the order of the data.</summary>
    public static IReadOnlyList<BearerRule> All { get; } = [.. CsvTable.FromEmbedded("data/planning/bearers.csv").Rows.Select(r => new BearerRule(
        r["kind"], r.Number("thickness_mm"), r.Number("width_mm"), r.Number("bending_n_per_mm2"), (decimal)r.Number("price_per_m"), r.Number("minutes"),
        r.Number("minutes_per_m"), r.Number("wait_hours"), r["behind"] == "yes"))];
}
