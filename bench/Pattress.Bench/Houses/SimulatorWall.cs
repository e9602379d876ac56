using Pattress.Supports;

namespace Pattress.Bench;

/// <summary>What the harder walls have that the model does not know.</summary>
internal enum WallTrouble { Plain, OffPitchSteel, Pipes, AlikeTaps, SecondDatum, Patches }

/// <summary>
/// One invented wall and what a fitter would hear, feel and find on it. All numbers assumed: length 2.4 to 6 m, pitch 600, 400
/// or 450 at 55, 35 and 10 %, set out from left 45, right 25, free 30 %, jitter 5 mm (8 % of walls 12), 2 % of studs missing,
/// studs at both ends, an opening with doubled trimmers in 45 %, a fifth of steel, solid-sounding patches.
/// </summary>
internal sealed class SimulatorWall
{
    private readonly Random _random;
    private readonly List<(double From, double To, double Solid)> _patches = [];
    private readonly List<(double At, double Centre)> _screws = [];
    private readonly List<double> _false = [];
    private readonly WallTrouble _trouble;
    private (double At, bool Solid) _lastTap = (double.NegativeInfinity, false);

    /// <param name="length">Length of the wall, mm, where it is known; else drawn.</param>
    /// <param name="screws">False leaves screws and false hits out: nobody will sweep it.</param>
    public SimulatorWall(Random random, WallTrouble trouble, double? length = null, bool screws = true)
    {
        (_random, _trouble) = (random, trouble);
        Length = length ?? Math.Round(2400 + (3600 * random.NextDouble()));
        Steel = random.NextDouble() < 0.2;
        Pitch = random.NextDouble() switch { < 0.55 => 600, < 0.90 => 400, _ => 450 };
        Lattice();
        if (random.NextDouble() < 0.45) Opening();
        Studs.AddRange([19, Length - 19]);
        Studs.Sort();
        Patches();
        if (screws) Screws();
    }

    /// <summary>Patches that sound solid without a support.</summary>
    public IReadOnlyList<(double From, double To, double Solid)> SolidPatches => _patches;

    /// <summary>The opening, where there is one: its sides.</summary>
    public (double From, double To)? Opened { get; private set; }

    public double Length { get; }

    public bool Steel { get; }

    public double Pitch { get; }

    public List<double> Studs { get; } = [];

    public double Half => Steel ? 25 : 19;

    public bool Hits(double at) => Studs.Any(s => Math.Abs(s - at) <= Half);

    /// <summary>At least 10 mm inside the support's edge.</summary>
    public bool Usable(double at) => Studs.Any(s => Math.Abs(s - at) <= Half - 10);

    /// <summary>A 640 mm window with a stud centre at least 20 mm inside it, its ends 30 mm inside the wall; null when none fits.</summary>
    public Zone? Window()
    {
        for (int i = 0; i < 200; i++)
        {
            double from = Math.Round(30 + ((Length - 700) * _random.NextDouble()));
            if (Studs.Any(s => s >= from + 20 && s <= from + 620)) return new(from, from + 640);
        }
        return null;
    }

    public bool Tap(double at)
    {
        double d = Studs.Min(s => Math.Abs(s - at)) - Half, p = 0.08 + (0.80 / (1 + Math.Exp((d - 6) / 7)));
        foreach (var (from, to, solid) in _patches) if (at >= from && at <= to) p = Math.Max(p, solid);
        bool heard = _random.NextDouble() < p;
        if (_trouble == WallTrouble.AlikeTaps && Math.Abs(at - _lastTap.At) < 60 && _random.NextDouble() < 0.3) heard = _lastTap.Solid;
        _lastTap = (at, heard);
        return heard;
    }

    public List<double> Sweep(double from, double to) => [.. _screws.Select(s => s.At).Concat(_false).Where(x => x >= from && x <= to).Order()];

    public bool Probe(double at) => _random.NextDouble() < (Hits(at) ? 0.98 : 0.01);

    private void Lattice()
    {
        double jitter = _random.NextDouble() < 0.08 ? 12 : 5, datum = _random.NextDouble();
        double first = datum < 0.45 ? 0 : datum < 0.70 ? Length % Pitch : Pitch * _random.NextDouble();
        double door = _trouble == WallTrouble.SecondDatum ? Length * (0.3 + (0.4 * _random.NextDouble())) : double.PositiveInfinity;
        for (double x = first; x <= Length - 60; x += Pitch)
        {
            // Past the door the tape starts anew, from the door's side.
            if (x > door) (x, door) = (door + (Pitch * _random.NextDouble()), double.PositiveInfinity);
            double off = _trouble == WallTrouble.OffPitchSteel && Steel ? 60 * (_random.NextDouble() - 0.5) : 0, at = x + (jitter * Gauss()) + off;
            if (at >= 60 && at <= Length - 60 && _random.NextDouble() >= 0.02) Studs.Add(at);
        }
    }

    /// <summary>Doubled trimmers at both sides; the line runs over the head, so that the lattice goes on.</summary>
    private void Opening()
    {
        double width = 700 + (600 * _random.NextDouble()), from = 200 + ((Length - width - 400) * _random.NextDouble());
        if (Length < width + 500) return;
        Opened = (from, from + width);
        Studs.AddRange([from - 19, from - 57, from + width + 19, from + width + 57]);
    }

    private void Patches()
    {
        double apart = _trouble == WallTrouble.Patches ? 1000 : 4000;
        for (double x = Exponential(apart); x < Length; x += Exponential(apart))
            _patches.Add((x, x + 60 + (190 * _random.NextDouble()), 0.7 + (0.2 * _random.NextDouble())));
    }

    private void Screws()
    {
        foreach (double s in Studs)
        {
            if (_random.NextDouble() >= 0.8) continue;
            double side = _random.NextDouble() < 0.5 ? -1 : 1;
            _screws.Add(Steel ? (s + (side * 19) + (6 * Gauss()), s) : (s + (5 * Gauss()), s));
            if (Steel && _random.NextDouble() < 0.5) _screws.Add((s - (side * 19) + (6 * Gauss()), s));
        }
        for (double x = Exponential(5000); x < Length; x += Exponential(5000)) _false.Add(x);
        if (_trouble == WallTrouble.Pipes) _false.AddRange([Length * _random.NextDouble(), Length * _random.NextDouble()]);
    }

    private double Exponential(double mean) => -mean * Math.Log(1 - _random.NextDouble());

    private double Gauss() => Math.Sqrt(-2 * Math.Log(1 - _random.NextDouble())) * Math.Cos(2 * Math.PI * _random.NextDouble());
}
