namespace Pattress.Jobs;

/// <summary>A wall or ceiling.</summary>
public sealed record Wall
{
    public required string Id { get; init; }

    public string Name { get; init; } = "";

    /// <summary><c>wall</c> or <c>ceiling</c>.</summary>
    public string Kind { get; init; } = "wall";

    public required double WidthMm { get; init; }

    public required double HeightMm { get; init; }

    /// <summary>Whole thickness where somebody measured it (at a door or window), else null.</summary>
    public double? ThicknessMm { get; init; }

    /// <summary><c>room</c>, <c>outside</c>, <c>neighbour</c>, <c>loft</c> or <c>unknown</c>.</summary>
    public string OtherSide { get; init; } = "unknown";

    public IReadOnlyList<Reading> Readings { get; init; } = [];

    public IReadOnlyList<Opening> Openings { get; init; } = [];

    public IReadOnlyList<Service> Services { get; init; } = [];

    /// <summary>Parts of the wall that the fitter says are built otherwise.</summary>
    public IReadOnlyList<WallZone> Zones { get; init; } = [];

    public IReadOnlyList<OldHole> OldHoles { get; init; } = [];

    /// <summary>Checks for cables and pipes that were done and recorded.</summary>
    public IReadOnlyList<StripCheck> StripChecks { get; init; } = [];

    public Condition Condition { get; init; } = new();

    /// <summary>
    /// <c>usual</c>, or a wall that this program does not judge alone: <c>no_fines</c>, <c>cast_concrete</c>, <c>clinker_block</c>,
    /// <c>rubble</c>, <c>honeycomb</c>, <c>metal_lath</c>, <c>resilient_bars</c>, <c>gypsum_fibre</c>, <c>wood_backed</c>,
    /// <c>furred_ceiling</c> or <c>sloping_ceiling</c>. Such a wall is "check first", with what to find out.
    /// </summary>
    public string BuiltAs { get; init; } = "usual";
}

/// <summary>The state of a wall's surface.</summary>
public sealed record Condition
{
    /// <summary><c>dry</c>, <c>damp</c>, <c>fresh_plaster</c> or <c>unknown</c>.</summary>
    public string Moisture { get; init; } = "unknown";

    /// <summary><c>plain</c>, <c>textured</c>, <c>tiled</c>, <c>panelled</c> or <c>unknown</c>.</summary>
    public string Coating { get; init; } = "plain";

    /// <summary>Sampled for asbestos: <c>not_sampled</c>, <c>clear</c> or <c>found</c>.</summary>
    public string Sampled { get; init; } = "not_sampled";
}

/// <summary>
/// One observation. Which fields are used depends on <see cref="Kind"/>; the others are null.
/// Readings are only ever added or withdrawn.
/// </summary>
public sealed record Reading
{
    /// <summary>UUID v7 or any short text unique in the job.</summary>
    public required string Id { get; init; }

    /// <summary>
    /// <c>tap</c>, <c>magnet</c>, <c>probe</c>, <c>hole</c>, <c>hooked_wire</c>, <c>stiff_wire</c>, <c>detector</c>,
    /// <c>outlet</c>, <c>rattle</c>, <c>cold</c> or <c>told</c>.
    /// </summary>
    public required string Kind { get; init; }

    /// <summary>Where (all but magnet and told).</summary>
    public Point? At { get; init; }

    /// <summary>Magnet: where the sweep began and ended, and what drew it.</summary>
    public Point? From { get; init; }

    public Point? To { get; init; }

    public IReadOnlyList<Point> Hits { get; init; } = [];

    /// <summary>Tap: <c>hollow</c>, <c>solid</c>, <c>high</c> or <c>dull</c>.</summary>
    public string? Sound { get; init; }

    /// <summary>Probe and hole: <c>support</c>, <c>void</c>, <c>dab</c>, <c>masonry</c>, <c>foam</c>, <c>metal</c> or <c>laths</c>.</summary>
    public string? Met { get; init; }

    /// <summary>Hole: diameter of the bit, mm.</summary>
    public double? DiameterMm { get; init; }

    /// <summary>Hole: depth from the face at which something solid was met behind the board, mm; null when nothing was.</summary>
    public double? SolidAtMm { get; init; }

    /// <summary>Hole: depth from the face to which the bit ran, mm.</summary>
    public double? DepthMm { get; init; }

    /// <summary>Hole: <c>white</c>, <c>wood</c>, <c>red</c>, <c>grey</c>, <c>grey_white</c>, <c>foam</c>, <c>bright</c> or <c>black</c>.</summary>
    public string? Swarf { get; init; }

    /// <summary>Hooked wire: thickness of the board with its skim, mm.</summary>
    public double? ThicknessMm { get; init; }

    /// <summary>Stiff wire: clear depth behind the board, mm.</summary>
    public double? VoidMm { get; init; }

    /// <summary>Detector: <c>stud</c>, <c>metal</c>, <c>live</c> or <c>none</c>.</summary>
    public string? Signal { get; init; }

    /// <summary>Outlet: <c>board_and_void</c>, <c>masonry</c>, <c>foam</c>, <c>laths</c> or <c>dab_gap</c>.</summary>
    public string? Shows { get; init; }

    /// <summary>Rattle and cold: <c>yes</c> or <c>no</c>.</summary>
    public string? Found { get; init; }

    /// <summary>Told by the owner: <c>timber_studs</c>, <c>steel_studs</c>, <c>dabs</c>, <c>laminate</c>, <c>lath</c> or <c>masonry</c>.</summary>
    public string? Says { get; init; }

    /// <summary>True when the fitter took it back; it is kept and not used.</summary>
    public bool Withdrawn { get; init; }
}

/// <summary>A <c>window</c>, <c>door</c> or <c>recess</c>.</summary>
public sealed record Opening(string Id, string Kind, Rect Area);

/// <summary>
/// Something with cables or pipes: <c>socket</c>, <c>switch</c>, <c>light</c>, <c>spur</c> (electrical);
/// <c>radiator</c>, <c>tap</c>, <c>pipe</c> (plumbed).
/// </summary>
/// <param name="Face"><c>this</c> face of the wall or the <c>other</c>.</param>
public sealed record Service(string Id, string Kind, Rect Area, string Face)
{
    public bool IsElectrical => Kind is "socket" or "switch" or "light" or "spur";
}

/// <summary>A zone with a build-up of its own: <c>lintel</c>, <c>reveal</c>, <c>boxing</c>, <c>chimney_breast</c>, <c>bulkhead</c>, <c>board_joint</c>, <c>door_leaf</c>, <c>panel</c>, <c>coving</c> or <c>noggin</c> (timber between the studs).</summary>
public sealed record WallZone(string Id, string Kind, Rect Area);

/// <summary>A hole or plug left from before.</summary>
public sealed record OldHole(string Id, Point At, double DiameterMm);

/// <summary>A recorded check of one strip for cables: <c>detector</c>, <c>isolated</c> or <c>looked_behind</c>.</summary>
/// <param name="Strip">The strip's id as the plan names it, e.g. <c>ceiling</c>, <c>corner_left</c>, <c>socket1_vertical</c>.</param>
public sealed record StripCheck(string Id, string Strip, string How);
