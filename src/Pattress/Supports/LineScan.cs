namespace Pattress.Supports;

/// <summary>How a tap sounded. A high hollow sound points to dabs, a dull one to foam or laths.</summary>
public enum TapSound { Hollow, Solid, High, Dull }

/// <summary>What a thin hole met behind the face. <c>Other</c> is foam, metal or anything without a word here.</summary>
public enum HoleMet { Support, Void, Dab, Masonry, Other, Metal, Passed }

/// <summary>One observation along a line. Positions in mm from the left end; the height tells lines of one wall apart.</summary>
/// <param name="Id">Short text unique in the scan; two readings of one id count once.</param>
public abstract record LineReading(string Id, double HeightMm);

/// <summary>A tap with the knuckle at one place.</summary>
public sealed record Tap(string Id, double AtMm, TapSound Sound, double HeightMm = 0) : LineReading(Id, HeightMm);

/// <summary>A magnet drawn along the line from one place to another, and where it was drawn to the wall.</summary>
public sealed record MagnetSweep(string Id, double FromMm, double ToMm, IReadOnlyList<double> HitsMm, double HeightMm = 0)
    : LineReading(Id, HeightMm);

/// <summary>A magnet drawn up or down at one place: a support shows its screws every 150 to 300 mm, a steel one draws all along.</summary>
public sealed record SweepAlong(string Id, double AtMm, double LengthMm, int Hits, double HeightMm = 0) : LineReading(Id, HeightMm);

/// <summary>A thin probe or a drilled hole.</summary>
public sealed record ThinHole(string Id, double AtMm, HoleMet Met, double HeightMm = 0) : LineReading(Id, HeightMm);

/// <summary>A stud detector held at one place.</summary>
public sealed record DetectorSignal(string Id, double AtMm, bool Beeped, double HeightMm = 0) : LineReading(Id, HeightMm);

/// <summary>A joint between boards, seen or felt: joints are made on supports.</summary>
public sealed record BoardJoint(string Id, double AtMm, double HeightMm = 0) : LineReading(Id, HeightMm);

/// <summary>A stretch of the line in which a support is wanted, mm.</summary>
public sealed record Zone(double FromMm, double ToMm);

/// <summary>A window or door on the wall; trimmers stand at its sides.</summary>
/// <param name="OnLine">True where the line runs through the opening itself, so that nothing is there.</param>
public sealed record LineOpening(double FromMm, double ToMm, bool OnLine);

/// <summary>All that was seen along the lines of one wall or ceiling.</summary>
/// <param name="LengthMm">Length of the wall, 100 to 30 000 mm.</param>
public sealed record LineScan(double LengthMm, IReadOnlyList<LineReading> Readings, IReadOnlyList<Zone> Zones)
{
    /// <summary>Openings that are drawn on the wall.</summary>
    public IReadOnlyList<LineOpening> Openings { get; init; } = [];

    /// <summary>Rates of this scan's own, as taught by holes; null: those of the table.</summary>
    public LineRates? Rates { get; init; }

    /// <summary>Height of the wall, mm, where it is known; 0 where not. With it what is solid at the height of a row of noggins may be one.</summary>
    public double WallHeightMm { get; init; }

    /// <summary>True for a ceiling: joists, whose direction is not known.</summary>
    public bool IsCeiling { get; init; }

    /// <summary>True for a line up the wall: its supports are plates, noggins or battens across, or one stud all along.</summary>
    public bool IsUp { get; init; }

    /// <summary>
    /// Ceilings: what was seen, along the other direction. With it the direction of the joists is inferred from both; without
    /// it a line may simply run along them.
    /// </summary>
    public LineScan? OtherWay { get; init; }
}
