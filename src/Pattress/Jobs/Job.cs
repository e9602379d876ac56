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

/// <summary>Choices that hold for the whole job. Every default is a documented value that the user can change.</summary>
public sealed record Settings
{
    /// <summary>Set of standards: <c>eurocode_uk</c> or <c>us</c>.</summary>
    public string Standards { get; init; } = "eurocode_uk";

    /// <summary>Editions of the documents; those of the other set are kept and not used.</summary>
    public Editions Editions { get; init; } = new();

    /// <summary><c>metric</c> or <c>imperial</c>, for what people read.</summary>
    public string Units { get; init; } = "metric";

    /// <summary><c>british</c>, <c>american</c> or another of <see cref="Text.Texts.Tongues"/>.</summary>
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
