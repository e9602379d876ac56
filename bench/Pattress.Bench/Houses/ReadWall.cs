using Pattress.Walls;

namespace Pattress.Bench;

/// <summary>A wall of a known build-up that can be tapped, swept, drilled and measured.</summary>
internal sealed class ReadWall
{
    private readonly Random _random;
    private readonly List<WallReading> _readings = [];
    private readonly double _front, _room, _strength;
    private int _count;

    public ReadWall(Random random, IReadOnlyList<BuildUp> rows)
    {
        _random = random;
        Is = Draw(rows);
        (_front, _room) = (Is.FrontMm + (Is.FrontSdMm * Gauss()), Is.HasVoid ? Math.Clamp(Is.VoidMm + (Is.VoidSdMm * Gauss()), Is.VoidLeastMm, Is.VoidMostMm) : 0);
        double tell = random.NextDouble();
        var r = WallRates.Default;
        _strength = tell < r.TellWell ? 1 : tell < 1 - r.TellPoor ? r.TellMiddlingStrength : r.TellPoorStrength;
        Site = new(true, false, random.NextDouble() < 0.3);
    }

    private ReadWall(ReadWall other)
    {
        (_random, _front, _room, _strength, _count, Is, Site) = (new Random(other._count + (int)(1000 * other._front)), other._front, other._room, other._strength, other._count, other.Is, other.Site);
        _readings.AddRange(other._readings);
        Done.AddRange(other.Done);
    }

    /// <summary>The same wall with what was read so far, to be read on without touching this one.</summary>
    public ReadWall Copy() => new(this);

    public BuildUp Is { get; }

    public CheckSite Site { get; private set; }

    public List<string> Done { get; } = [];

    public WallEvidence Evidence => new("w", "wall", [.. _readings]);

    public void Do(string check)
    {
        Done.Add(check);
        switch (check)
        {
            case "tap": for (int k = 0; k < 5; k++) Add(new TapHeard(Id(), X(), 1500, Tap())); break;
            case "detector" or "outlet": Add(new WordReading(Id(), X(), 1500, check, Word(check, 1))); break;
            case "magnet": Add(new MagnetDrawn(Id(), X(), 1500, 1000, Poisson(PerMetre(Is)))); break;
            case "hole": Hole(); break;
            case "hooked_wire": Bored(); Add(new HookedWire(Id(), X(), 1500, Misread() ? 5 + (60 * _random.NextDouble()) : _front + (0.8 * Gauss()))); break;
            default: Bored(); Add(new StiffWire(Id(), X(), 1500, Misread() ? 100 * _random.NextDouble() : Math.Max(0, _room + (3 * Gauss())))); break;
        }
    }

    private void Add(WallReading reading) => _readings.Add(reading);

    private void Bored() => Site = Site with { HasHole = true };

    private string Id() => $"r{_count++:000}";

    /// <summary>Places far enough apart not to be one opinion.</summary>
    private double X() => 300 * _count;

    private bool Misread() => !Is.HasVoid || _random.NextDouble() < WallRates.Default.Misread;

    private string Tap() => _random.NextDouble() < 0.1 ? Likelihoods.Findings("tap")[_random.Next(Likelihoods.Findings("tap").Count)] : Word("tap", _strength);

    private string Word(string reading, double strength) => Pick(Likelihoods.Findings(reading),
        f => (strength * Likelihoods.Word(reading, f, Is.Family)) + ((1 - strength) * Likelihoods.Mean(reading, f)));

    private void Hole()
    {
        Bored();
        bool on = Is.Support != "none" && _random.NextDouble() < Is.SupportShare;
        string really = on ? Is.SupportMaterial : Is.InsulationMm > 0 && _random.NextDouble() < 0.5 ? "foam" : Is.Family == "lath" && _random.NextDouble() < 0.7 ? "laths" : Is.HasBase ? Is.Base : "void";
        string met = Pick(["support", "void", "dab", "masonry", "foam", "metal", "laths"], f => Likelihoods.Hole("met", f, really));
        string swarf = Pick(["white", "wood", "red", "grey", "grey_white", "foam", "bright", "black"], f => Likelihoods.Hole("swarf", f, really));
        double solid = on ? _front : _front + _room;
        bool felt = Is.HasVoid ? on || Is.HasBase : _random.NextDouble() < WallRates.Default.MasonryDepthTold;
        Add(new HoleFelt(Id(), X(), 1500) { Met = met, Swarf = swarf, SolidAtMm = felt && (on || Is.HasBase) ? solid + (2 * Gauss()) : null });
    }

    public static double PerMetre(BuildUp b)
    {
        var r = WallRates.Default;
        return b.Family == "lath" ? r.MagnetPerMLath : b.Support switch { "steel_stud" => r.MagnetPerMSteel, "timber_stud" or "batten" => r.MagnetPerMTimber, _ => r.MagnetPerMOther };
    }

    private int Poisson(double mean)
    {
        int n = 0;
        for (double p = _random.NextDouble(); p > Math.Exp(-mean); p *= _random.NextDouble()) n++;
        return n;
    }

    private BuildUp Draw(IReadOnlyList<BuildUp> rows)
    {
        double left = rows.Sum(b => b.Prior) * _random.NextDouble();
        foreach (var b in rows) if ((left -= b.Prior) <= 0) return b;
        return rows[^1];
    }

    private string Pick(IReadOnlyList<string> words, Func<string, double> weight)
    {
        double left = words.Sum(weight) * _random.NextDouble();
        foreach (string word in words) if ((left -= weight(word)) <= 0) return word;
        return words[^1];
    }

    private double Gauss() => Math.Sqrt(-2 * Math.Log(1 - _random.NextDouble())) * Math.Cos(2 * Math.PI * _random.NextDouble());
}
