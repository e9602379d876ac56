using CsCheck;
using Pattress.Actions.Fixtures;
using Pattress.Jobs;

namespace Pattress.Tests.Jobs;

/// <summary>Any job that the reader takes, for property tests.</summary>
internal static class JobGen
{
    private const double Width = 4000, Height = 2400;

    private static readonly Gen<Point> OnWall = Gen.Select(Gen.Double[0, Width], Gen.Double[0, Height], (x, y) => new Point(x, y));
    private static readonly Gen<Rect> Area = Gen.Select(Gen.Double[0, 3000], Gen.Double[0, 1000], Gen.Double[1, 900], Gen.Double[1, 1300], (x, y, w, h) => new Rect(x, y, w, h));
    private static readonly Gen<string> Words = Gen.String[Gen.Char["abcäö€ \"\\<>&'1"], 0, 20];

    private static Gen<string> OneOf(params string[] words) => Gen.Int[0, words.Length - 1].Select(i => words[i]);

    private static Gen<double?> Maybe(double min, double max) => Gen.Select(Gen.Bool, Gen.Double[min, max], (has, value) => has ? value : (double?)null);

    private static Gen<Settings> Settings => Gen.Select(
        Gen.Select(OneOf("eurocode_uk", "us"), OneOf("metric", "imperial"), OneOf("british", "american"), OneOf("GBP", "USD")),
        Gen.Select(Gen.Double[1, 100], Gen.Double[1, 3], Gen.Int[1, 3], Gen.Int[0, 1000]),
        Gen.Select(Gen.Bool, Gen.Int[1400, 2100], OneOf("flat", "unknown"), OneOf("2023", "none"), OneOf("2016", "none")),
        (words, numbers, house) => new Settings
        {
            Standards = words.Item1, Units = words.Item2, English = words.Item3, Currency = words.Item4,
            LifeYears = numbers.Item1, GammaPermanent = numbers.Item2, GammaVariable = 4 - numbers.Item2, ServiceClass = numbers.Item3, MinutePrice = numbers.Item4 / 100m,
            Editions = new() { TimberDraft = house.Item4, Aisi = house.Item5 },
            YearBuilt = house.Item1 ? house.Item2 : null, House = house.Item3,
            Buying = new BuyingWishes
            {
                Budget = house.Item1 ? numbers.Item4 : null, MostKinds = numbers.Item3, MostBits = house.Item1 ? 3 : null, VanOnly = house.Item1, NoSecondTrip = !house.Item1,
                Avoid = house.Item1 ? ["hammer_in", "strap_toggle.medium"] : [], SparePercent = numbers.Item3, TripPrice = numbers.Item4 / 100m,
            },
            Quote = new QuoteTerms
            {
                MarkUpPercent = numbers.Item4 / 10m, TaxPercent = numbers.Item3, Visits = numbers.Item3, TravelMinutes = numbers.Item1, ParkingPrice = numbers.Item4 / 100m,
                Floors = numbers.Item3, RoundTo = house.Item1 ? 0.05m : 1m,
            },
        });

    private static Gen<Reading> Reading(string id) => Gen.OneOf(
        Gen.Select(OnWall, OneOf("hollow", "solid", "high", "dull"), (at, sound) => new Reading { Id = id, Kind = "tap", At = at, Sound = sound }),
        Gen.Select(Gen.Double[0, 1500], Gen.Double[1, 2400], Gen.Double[0, 1].Array[0, 5], (from, y, hits) => new Reading
        {
            Id = id, Kind = "magnet", From = new Point(from, y), To = new Point(from + 2000, y), Hits = [.. hits.Select(h => new Point(from + (2000 * h), y))],
        }),
        Gen.Select(OnWall, Maybe(0.5, 20), Maybe(0, 50), Gen.Double[50, 90], Gen.Bool, (at, diameter, solid, depth, withdrawn) => new Reading
        {
            Id = id, Kind = "hole", At = at, Met = "masonry", DiameterMm = diameter, SolidAtMm = solid, DepthMm = depth, Swarf = "red", Withdrawn = withdrawn,
        }),
        Gen.Select(OnWall, Gen.Double[1, 200], (at, t) => new Reading { Id = id, Kind = "hooked_wire", At = at, ThicknessMm = t }),
        Gen.Select(OnWall, Gen.Double[0, 2000], (at, v) => new Reading { Id = id, Kind = "stiff_wire", At = at, VoidMm = v }),
        Gen.Select(OnWall, OneOf("stud", "live"), (at, s) => new Reading { Id = id, Kind = "detector", At = at, Signal = s }),
        Gen.Select(OnWall, OneOf("foam", "dab_gap"), (at, s) => new Reading { Id = id, Kind = "outlet", At = at, Shows = s }),
        Gen.Select(OnWall, OneOf("rattle", "cold"), OneOf("yes", "no"), (at, k, f) => new Reading { Id = id, Kind = k, At = at, Found = f }),
        OneOf("dabs", "lath").Select(s => new Reading { Id = id, Kind = "told", Says = s }));

    private static Gen<Wall> Wall(int n) => Gen.Select(
        Gen.Select(Words, OneOf("wall", "ceiling"), Maybe(20, 2000), OneOf("room", "outside", "unknown")),
        Gen.Select(Reading($"r{n}a"), Reading($"r{n}b"), Reading($"r{n}c")),
        Gen.Select(Area, Area, Area, OneOf("this", "other")), OnWall,
        OneOf("dry", "damp", "unknown"),
        (words, readings, areas, hole, moisture) => new Wall
        {
            Id = $"w{n}", Name = words.Item1, Kind = words.Item2, WidthMm = Width, HeightMm = Height, ThicknessMm = words.Item3, OtherSide = words.Item4,
            Readings = [readings.Item1, readings.Item2, readings.Item3],
            Openings = [new Opening($"o{n}", "window", areas.Item1)],
            Services = [new Service($"s{n}", "socket", areas.Item2, areas.Item4)],
            Zones = [new WallZone($"z{n}", "lintel", areas.Item3)],
            OldHoles = [new OldHole($"h{n}", hole, 8)],
            StripChecks = [new StripCheck($"c{n}", "ceiling", "isolated")],
            Condition = new Condition { Moisture = moisture, Coating = "tiled", Sampled = "clear" }, BuiltAs = n == 0 ? "rubble" : "usual",
        });

    private static Gen<Fixture> Fixture(int n, FixtureKind kind) => Gen.Select(
        Words, OnWall, Gen.Double[0, 1].Array[kind.Fields.Count], Gen.Bool.Array[kind.Fields.Count], Gen.Bool.Array[3],
        (name, at, parts, given, flags) => new Fixture
        {
            Id = $"f{n}", Wall = kind.OnWall ? "w0" : "w1", What = kind.Id, Name = name, At = at,
            Brackets = [.. Enumerable.Range(0, kind.MinBrackets).Select(i => new Point(100 + (150 * i), at.Y))],
            Numbers = kind.Fields.Select((f, i) => (f, i)).Where(p => p.f.Words.Count == 0 && (p.f.Required || given[p.i])).ToDictionary(p => p.f.Name, p => Between(p.f, parts[p.i])),
            Words = kind.Fields.Select((f, i) => (f, i)).Where(p => p.f.Words.Count > 0 && (p.f.Required || given[p.i])).ToDictionary(p => p.f.Name, p => p.f.Words[(int)(parts[p.i] * 0.999 * p.f.Words.Count)]),
            Removable = flags[0], OverBed = flags[1], ToeStrip = flags[2],
        });

    private static double Between(FixtureField field, double part)
    {
        double value = field.Min!.Value + (part * (field.Max!.Value - field.Min.Value));
        return field.Dimension == FieldDimension.Count ? Math.Floor(value) : value;
    }

    private const string Noon = "2026-03-01T12:00:00Z";

    private static WorkDone Done { get; } = new()
    {
        Holes = [new DrilledHole("d0", "f0", 1, new Point(100, 2000), 14, 13.5, Noon, false), new DrilledHole("d1", "f9", 0, new Point(1, 2), 6, 30, Noon, true)],
        Read = [new CautionsRead("q0", "w0", ["caution_cables", "caution_pipes"], Noon)],
        Signed = [new Signature("s9", "A. B.", "0123456789abcdef", [[new Point(0, 0), new Point(1000, 500.5)], [new Point(3, 4)]], Noon, true)],
    };

    public static Gen<Job> Job { get; } = Gen.Select(
        Settings, Words, Wall(0), Wall(1), Gen.Int[0, FixtureCatalogue.Kinds.Count - 1].SelectMany(i => Fixture(0, FixtureCatalogue.Kinds[i])),
        (settings, title, first, second, fixture) => new Job
        {
            Title = title, Settings = settings, Walls = [first with { Kind = "wall" }, second with { Kind = "ceiling" }], Fixtures = [fixture],
            Stock = [new StockItem("strap_toggle.medium", 3), new StockItem("bit.masonry.5.5", 1, 1), new StockItem("setting_tool", 1)],
            Prices = [new OwnPrice("wood_screw.long", title, 100, 7.45m, 1.5) { Size = new(3.5, 90, null, null, null, 40), Claim = new(350, "tension", "mean", 2, 12.5) }, new OwnPrice("plug_and_screw.short", "", 50, 0m, null)],
            Actuals = [new Actual("a1", "drill_and_set", 12, 31.5)],
            Trials = [new OwnTest { Id = "t0", Fixing = "strap_toggle.medium", Load = "tension", LoadN = 512.5, BoardMm = 12.5, Outcome = "stopped", Moisture = "damp", Into = "board", Wall = "w0", From = title, Where = "site", Mode = "slid", On = "2025-03-14", Note = title, Withdrawn = true }],
            Proofs = [new ProofRecord { Id = "p0", Fixture = "f0", Bracket = 1, Hole = 2, Fixing = "strap_toggle.medium", LoadN = 120, HeldS = 60, MovedMm = 0.25, Result = "came_away", Way = "tester", On = "2025-03-14T09:30:00Z", Note = title, Withdrawn = true }],
            Id = "j0", Done = Done,
        });
}
