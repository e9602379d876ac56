namespace Pattress.Fixings;

/// <summary>How a kind holds.</summary>
public enum HoldsBy { Friction, Plug, Wings, ThreadInWood, ThreadInSteel, ThreadInPlug, Sleeve }

/// <summary>A kind of fixing, named by how it works. A row of <c>data/fixings/kinds.csv</c>.</summary>
/// <param name="Into">What it can be set into.</param>
/// <param name="Removable">The screw or bolt can come out and go in again.</param>
/// <param name="Reusable">The whole fixing can come out and be used again.</param>
/// <param name="SettingTool">Id of the tool that it wants, or <c>none</c>.</param>
/// <param name="Bit">Kind of bit for its hole, or <c>none</c> when it makes its own.</param>
/// <param name="Creeps">Plastic carries the load, so long-lasting load counts against it.</param>
/// <param name="Person">May hold a person where its base may.</param>
public sealed record FixingKind(
    string Id, HoldsBy HoldsBy, IReadOnlyList<Behind> Into, bool Removable, bool Reusable, string SettingTool, string Bit, bool Creeps, bool Person, string Source);

/// <summary>A size of a kind. A row of <c>data/fixings/sizes.csv</c>; lengths in mm, price in the job's currency.</summary>
/// <param name="HoleMm">Hole in the face; 0 when it makes its own.</param>
/// <param name="GripMinMm">Least thickness in front of what opens behind.</param>
/// <param name="GripMaxMm">Greatest such thickness.</param>
/// <param name="VoidMm">Least clear depth behind the board.</param>
/// <param name="BearsLongMm">What bears on the back: long side, <paramref name="BearsWideMm"/> the short side.</param>
/// <param name="ScrewMm">Screw or bolt, nominal diameter.</param>
/// <param name="HeadMm">Diameter that bears on the bracket.</param>
/// <param name="EmbedMm">Depth wanted in the support or masonry.</param>
/// <param name="AssumedMeanN">Mean tension in 12.5 mm board where nothing bears behind; assumed.</param>
public sealed record FixingSize(
    string Id, FixingKind Kind, string Size, double HoleMm, double GripMinMm, double GripMaxMm, double VoidMm,
    double BearsLongMm, double BearsWideMm, double ScrewMm, double LengthMm, double HeadMm, double EmbedMm,
    double? AssumedMeanN, double Minutes, decimal Price, int Pack, string Source)
{
    /// <summary>Price of a pack where the user gave one of his own; null: the piece price times the pack.</summary>
    public decimal? OwnPackPrice { get; init; }

    /// <summary>What the user's packet claims of it, or null.</summary>
    public Jobs.OwnClaim? Claim { get; init; }

    /// <summary>Price of a pack, to the penny.</summary>
    public decimal PackPrice => OwnPackPrice ?? decimal.Round(Price * Pack, 2, MidpointRounding.ToEven);

    /// <summary>Diameter of the disc with the same bearing perimeter as the bar, mm.</summary>
    public double BearingDiameterMm => 2 * (BearsLongMm + BearsWideMm) / Math.PI;
}
