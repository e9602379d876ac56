namespace Pattress.Jobs;

/// <summary>A point on a wall in mm from its lower left corner as seen from the room (ceilings: from below); x right, y up.</summary>
public readonly record struct Point(double X, double Y);

/// <summary>A rectangle on a wall in mm: lower left corner and size.</summary>
public readonly record struct Rect(double X, double Y, double Width, double Height)
{
    public double Right => X + Width;

    public double Top => Y + Height;

    public bool Contains(Point p) => p.X >= X && p.X <= Right && p.Y >= Y && p.Y <= Top;
}

/// <summary>A job: what the fitter knows of a house and what shall hang in it. Document version 1.</summary>
public sealed record Job
{
    /// <summary>The document's version, written as <c>pattress_job</c>.</summary>
    public const int Version = 1;

    /// <summary>A UUID v7 made where the job was begun, so that two devices know it for the same; empty when nobody gave one.</summary>
    public string Id { get; init; } = "";

    public string Title { get; init; } = "";

    public Settings Settings { get; init; } = new();

    public IReadOnlyList<Wall> Walls { get; init; } = [];

    public IReadOnlyList<Fixture> Fixtures { get; init; } = [];

    /// <summary>What is in the van.</summary>
    public IReadOnlyList<StockItem> Stock { get; init; } = [];

    /// <summary>The fitter's own prices, in place of the invented ones.</summary>
    public IReadOnlyList<OwnPrice> Prices { get; init; } = [];

    /// <summary>How long work took in truth.</summary>
    public IReadOnlyList<Actual> Actuals { get; init; } = [];

    /// <summary>The user's own tests of fixings.</summary>
    public IReadOnlyList<OwnTest> Trials { get; init; } = [];

    /// <summary>Pulls on what hangs in this house.</summary>
    public IReadOnlyList<ProofRecord> Proofs { get; init; } = [];

    /// <summary>What was done on site.</summary>
    public WorkDone Done { get; init; } = new();
}

/// <summary>One test of a fixing by the user, to failure or stopped before it. Tests are only ever added or withdrawn.</summary>
public sealed record OwnTest
{
    /// <summary>UUID v7 or any short text unique in the job.</summary>
    public required string Id { get; init; }

    /// <summary>Kind and size id of the catalogue, e.g. <c>strap_toggle.medium</c>.</summary>
    public required string Fixing { get; init; }

    /// <summary><c>tension</c> or <c>shear</c>, on one fixing.</summary>
    public required string Load { get; init; }

    /// <summary>Load at failure, or at which the test was stopped (N).</summary>
    public required double LoadN { get; init; }

    /// <summary><c>failed</c> or <c>stopped</c>.</summary>
    public string Outcome { get; init; } = "failed";

    /// <summary>Thickness of the board tested (mm); null when nobody said, and then it raises nothing.</summary>
    public double? BoardMm { get; init; }

    /// <summary>The board's state: <c>dry</c>, <c>damp</c>, <c>fresh_plaster</c> or <c>unknown</c>.</summary>
    public string Moisture { get; init; } = "unknown";

    /// <summary><c>bench</c> or <c>site</c>.</summary>
    public string Where { get; init; } = "bench";

    /// <summary>How it failed: <c>board</c>, <c>slid</c>, <c>fixing</c>, <c>screw</c> or <c>unknown</c>.</summary>
    public string Mode { get; init; } = "unknown";

    /// <summary>Date, or date and time in UTC, ISO 8601; empty when nobody said.</summary>
    public string On { get; init; } = "";

    public string Note { get; init; } = "";

    /// <summary>True when the user took it back; it is kept and not used.</summary>
    public bool Withdrawn { get; init; }
}

/// <summary>One pull on a fixing that stays, to prove it. Records are only ever added or withdrawn.</summary>
public sealed record ProofRecord
{
    /// <summary>UUID v7 or any short text unique in the job.</summary>
    public required string Id { get; init; }

    /// <summary>The fixture it belongs to; one that is no longer in the job is kept and not used.</summary>
    public required string Fixture { get; init; }

    /// <summary>Index of the bracket, from 0.</summary>
    public int Bracket { get; init; }

    /// <summary>Index of the hole in the bracket, from 0; null for a pull on the bracket as a whole.</summary>
    public int? Hole { get; init; }

    /// <summary>What was set there: kind and size id of the catalogue; empty when nobody said.</summary>
    public string Fixing { get; init; } = "";

    /// <summary>The pull (N); where it came away, the load at that moment.</summary>
    public required double LoadN { get; init; }

    /// <summary>How long it was held, s; null when nobody timed it.</summary>
    public double? HeldS { get; init; }

    /// <summary>Movement against the pencil mark (mm); null when nobody looked.</summary>
    public double? MovedMm { get; init; }

    /// <summary><c>held</c>, <c>moved</c> (more than allowed) or <c>came_away</c>.</summary>
    public required string Result { get; init; }

    /// <summary><c>luggage_scale</c>, <c>spring_balance</c>, <c>bucket_on_arm</c>, <c>tester</c> or <c>other</c>.</summary>
    public string Way { get; init; } = "other";

    /// <summary>Date, or date and time in UTC, ISO 8601; empty when nobody said.</summary>
    public string On { get; init; } = "";

    public string Note { get; init; } = "";

    /// <summary>True when the user took it back; it is kept and not used.</summary>
    public bool Withdrawn { get; init; }
}

/// <summary>Choices that hold for the whole job. Every default is a documented value that the user can change.</summary>
public sealed record Settings
{
    /// <summary>Set of standards: <c>eurocode_uk</c> or <c>us</c>.</summary>
    public string Standards { get; init; } = "eurocode_uk";

    /// <summary>Editions of the documents; those of the other set are kept and not used.</summary>
    public Editions Editions { get; init; } = new();

    /// <summary><c>metric</c> or <c>imperial</c>, for what people read.</summary>
    public string Units { get; init; } = "metric";

    /// <summary><c>british</c> or <c>american</c>.</summary>
    public string English { get; init; } = "british";

    /// <summary>ISO 4217 code.</summary>
    public string Currency { get; init; } = "GBP";

    /// <summary>Reference period of every probability of failure, years.</summary>
    public double LifeYears { get; init; } = 10;

    /// <summary>Partial factor on permanent actions, EN 1990 Table A1.2(B); the American set counts every action once.</summary>
    public double GammaPermanent { get; init; } = 1.35;

    /// <summary>Partial factor on variable actions, EN 1990 Table A1.2(B); the American set counts every action once.</summary>
    public double GammaVariable { get; init; } = 1.5;

    /// <summary>Service class of EN 1995-1-1 2.3.1.3: 1, 2 or 3.</summary>
    public int ServiceClass { get; init; } = 1;

    /// <summary>What a minute of the fitter's time costs, in the job's currency (assumed).</summary>
    public decimal MinutePrice { get; init; } = 0.50m;

    /// <summary>Year the house was built, null when unknown.</summary>
    public int? YearBuilt { get; init; }

    /// <summary><c>terraced</c>, <c>semi</c>, <c>detached</c>, <c>flat</c>, <c>bungalow</c> or <c>unknown</c>.</summary>
    public string House { get; init; } = "unknown";

    /// <summary>What is wanted of the shopping.</summary>
    public BuyingWishes Buying { get; init; } = new();

    /// <summary>What a quote goes by.</summary>
    public QuoteTerms Quote { get; init; } = new();
}

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

/// <summary>Something that shall hang. What else it needs depends on <see cref="What"/>: see the catalogue of fixtures.</summary>
public sealed record Fixture
{
    public required string Id { get; init; }

    public required string Wall { get; init; }

    /// <summary>Kind of fixture, e.g. <c>curtain_pole</c>; a fixed id of <c>data/fixtures</c>.</summary>
    public required string What { get; init; }

    public string Name { get; init; } = "";

    /// <summary>Middle of the fixture's line of brackets, or its middle where it has no such line.</summary>
    public Point At { get; init; }

    /// <summary>Brackets placed by the user; empty: the fixture places them itself.</summary>
    public IReadOnlyList<Point> Brackets { get; init; } = [];

    /// <summary>Numbers by field name with unit suffix, e.g. <c>width_mm</c>; in mm, kg, N and so on, checked at the door.</summary>
    public IReadOnlyDictionary<string, double> Numbers { get; init; } = new Dictionary<string, double>();

    /// <summary>Words by field name, e.g. <c>fabric</c> = <c>velvet</c>; checked at the door.</summary>
    public IReadOnlyDictionary<string, string> Words { get; init; } = new Dictionary<string, string>();

    /// <summary>The fixing must come out again (rented rooms, screens, radiators).</summary>
    public bool Removable { get; init; }

    /// <summary>It hangs over a bed: a higher class.</summary>
    public bool OverBed { get; init; }

    /// <summary>A strip or plate under the bracket keeps its toe from cutting into the board.</summary>
    public bool ToeStrip { get; init; }
}

/// <summary>Something in the van.</summary>
/// <param name="Fixing">Kind and size id of the catalogue, e.g. <c>strap_toggle.medium</c>; a bit, e.g. <c>bit.masonry.5.5</c>; or a setting tool.</param>
/// <param name="Least">Below this many the stock is low; 0 for never.</param>
public sealed record StockItem(string Fixing, int Count, int Least = 0);
