namespace Pattress.Walls;

/// <summary>One observation on a wall, at a place in mm from its lower left corner.</summary>
/// <param name="Id">Short text unique on the wall; two readings of one id count once.</param>
public abstract record WallReading(string Id, double XMm, double YMm);

/// <summary>A tap: <c>hollow</c>, <c>solid</c>, <c>high</c> or <c>dull</c>.</summary>
public sealed record TapHeard(string Id, double XMm, double YMm, string Sound) : WallReading(Id, XMm, YMm);

/// <summary>A magnet drawn over a length of wall and how often it was drawn to it.</summary>
public sealed record MagnetDrawn(string Id, double XMm, double YMm, double LengthMm, int Hits) : WallReading(Id, XMm, YMm);

/// <summary>A hole felt while it was drilled; what was not noted is null.</summary>
public sealed record HoleFelt(string Id, double XMm, double YMm) : WallReading(Id, XMm, YMm)
{
    /// <summary><c>support</c>, <c>void</c>, <c>dab</c>, <c>masonry</c>, <c>foam</c>, <c>metal</c> or <c>laths</c>.</summary>
    public string? Met { get; init; }

    /// <summary>Depth from the face at which something solid was met behind the board.</summary>
    public double? SolidAtMm { get; init; }

    /// <summary>Depth from the face to which the bit ran with nothing solid met; null: up to the chuck.</summary>
    public double? RanToMm { get; init; }

    /// <summary>Depth at which the bit broke through the back of the board.</summary>
    public double? BoardBackMm { get; init; }

    /// <summary><c>white</c>, <c>wood</c>, <c>red</c>, <c>grey</c>, <c>grey_white</c>, <c>foam</c>, <c>bright</c> or <c>black</c>.</summary>
    public string? Swarf { get; init; }

    /// <summary>Chance, from elsewhere, that a support stands behind this place; null: the build-up's own share.</summary>
    public double? OnSupport { get; init; }
}

/// <summary>A hooked wire pulled tight against the back: thickness of what is in front of the void.</summary>
public sealed record HookedWire(string Id, double XMm, double YMm, double ThicknessMm) : WallReading(Id, XMm, YMm);

/// <summary>A stiff wire to the stop: clear depth behind the board.</summary>
public sealed record StiffWire(string Id, double XMm, double YMm, double VoidMm) : WallReading(Id, XMm, YMm);

/// <summary>Readings of one word: kind <c>detector</c>, <c>outlet</c>, <c>rattle</c>, <c>cold</c> or <c>told</c>, finding as in <c>data/walls/likelihoods.csv</c>.</summary>
public sealed record WordReading(string Id, double XMm, double YMm, string Kind, string Finding) : WallReading(Id, XMm, YMm);

/// <summary>Everything known of one wall, ceiling or zone.</summary>
/// <param name="Kind">Kind of build-up to choose among: <c>wall</c>, <c>ceiling</c>, <c>lintel</c>, <c>reveal</c>, <c>boxing</c> or <c>panel</c>.</param>
public sealed record WallEvidence(string WallId, string Kind, IReadOnlyList<WallReading> Readings)
{
    /// <summary><c>plain</c>, <c>textured</c>, <c>tiled</c>, <c>panelled</c> or <c>unknown</c>: a face on top of the build-up.</summary>
    public string Face { get; init; } = "plain";

    public int? YearBuilt { get; init; }

    /// <summary><c>terraced</c>, <c>semi</c>, <c>detached</c>, <c>flat</c>, <c>bungalow</c> or <c>unknown</c>.</summary>
    public string House { get; init; } = "unknown";

    /// <summary>The job's set of standards: where it is <c>us</c>, boards come in inches.</summary>
    public string Standards { get; init; } = "";

    /// <summary><c>room</c>, <c>outside</c>, <c>neighbour</c>, <c>loft</c> or <c>unknown</c>.</summary>
    public string OtherSide { get; init; } = "unknown";

    /// <summary>Whole thickness measured at a door or window, mm.</summary>
    public double? WholeThicknessMm { get; init; }

    /// <summary>Openings of the wall, for <c>WallModel.InferZones</c>: x, y of the lower left corner, width, height.</summary>
    public IReadOnlyList<WallOpening> Openings { get; init; } = [];

    /// <summary>Parts that the fitter says are built otherwise.</summary>
    public IReadOnlyList<WallPart> Parts { get; init; } = [];
}

/// <summary>A window, door or recess, mm.</summary>
public sealed record WallOpening(string Id, double XMm, double YMm, double WidthMm, double HeightMm);

/// <summary>A part of a wall with its own build-up: <c>lintel</c>, <c>reveal</c>, <c>boxing</c>, <c>chimney_breast</c>, <c>bulkhead</c>, <c>board_joint</c>, <c>door_leaf</c>, <c>panel</c> or <c>noggin</c>.</summary>
public sealed record WallPart(string Id, string Kind, double XMm, double YMm, double WidthMm, double HeightMm);
