using Pattress.Actions;
using Pattress.Brackets;
using Pattress.Fixings;
using Pattress.Jobs;
using Pattress.Strength.Mechanisms;
using Pattress.Working;

namespace Pattress.Planning;

/// <summary>Worst forces of one load case over the stiffness intervals: design values, N.</summary>
/// <param name="Tension">Per used hole, the greatest tension over the intervals, as the contact model of a stiff plate has it.</param>
/// <param name="Shear">Per used hole.</param>
/// <param name="ContactN">Greatest force with which the plate presses on the wall.</param>
/// <param name="Toe">What it presses on.</param>
/// <param name="Prying">Allowance on the tension for a thin plate that pries.</param>
/// <param name="MeanShare">Mean load over design load, for the probability of failure.</param>
public sealed record CaseForces(
    LoadCase Case, IReadOnlyList<double> Tension, IReadOnlyList<double> Shear, double ContactN, ToeArea Toe, double Prying, double MeanShare, double ActionCov)
{
    /// <summary>Pressure under the toe, N/mm²: the contact force spread over the block that a crushing board makes of it.</summary>
    public double ToeMpa => ContactN / Toe.Mm2(null);
}

/// <summary>The block on which a bracket's toe presses when the board under it begins to crush: a share of the plate, and the strip under it.</summary>
/// <param name="PlateMm2">Area of the plate.</param>
/// <param name="StripWidthMm">Width of the strip under the toe; 0 without one.</param>
public sealed record ToeArea(double PlateMm2, double StripWidthMm)
{
    /// <summary>A strip under the toe spreads its pressure over this much more of the plate's height, mm (assumed).</summary>
    public static double StripMm { get; } = Factors.Of("toe_strip_mm");

    /// <summary>Area, mm².</summary>
    public double Mm2(Trace? trace)
    {
        double k_toe = Factors.Value("toe_share", "k_toe", "", trace), A_plate = PlateMm2, b_strip = StripWidthMm;
        if (b_strip <= 0) return trace.Step("A_toe", k_toe * A_plate, "mm²", "mechanics: block under the toe", [In.Of(k_toe), In.Of(A_plate)]);
        double h_strip = Factors.Value("toe_strip_mm", "h_strip", "mm", trace);
        return trace.Step("A_toe", k_toe * A_plate + h_strip * b_strip, "mm²", "mechanics: block under the toe and its strip", [In.Of(k_toe), In.Of(A_plate), In.Of(h_strip), In.Of(b_strip)]);
    }
}

/// <summary>
/// Forces on the fixings of one bracket for the holes in use. Stiffness is never asked for: the interval's corners are
/// solved and the worst is kept. Answers are remembered, since many sizes share a stiffness class.
/// </summary>
public sealed class Forces(BracketActions bracket, bool toeStrip)
{
    /// <summary>Scatter of a permanent load: what a thing weighs (assumed).</summary>
    private static readonly double PermanentCov = Factors.Of("permanent_cov");

    /// <summary>A characteristic variable load is taken as the 95 % fractile; its mean lies this many sd below.</summary>
    private const double Fractile95 = 1.645;

    /// <summary>A plate on one fixing hangs straight when the load's line passes it by no more than this, mm (assumed).</summary>
    private const double TurnsByMm = 15;

    private readonly Dictionary<(IReadOnlyList<int> Holes, HoldsBy HoldsBy, Interval Bed), IReadOnlyList<CaseForces>?> _known = [];
    private readonly Plate _plate = Plate.Of([.. Outline(bracket.Plate, toeStrip).Select(p => new Corner(p.X, p.Y))]);

    /// <summary>Forces of every load case, or null when the plate could turn about its fixings.</summary>
    /// <param name="used">Indices of the plate's holes in use.</param>
    public IReadOnlyList<CaseForces>? Of(IReadOnlyList<int> used, HoldsBy holdsBy, Spot spot)
    {
        var key = (used, holdsBy, BedAt(spot));
        if (!_known.TryGetValue(key, out var forces))
            _known[key] = forces = Solve(used, StiffnessData.Fixing(holdsBy), key.Item3, holdsBy is HoldsBy.Wings or HoldsBy.Plug);
        return forces;
    }

    private (Spot? Spot, Interval Bed) _bed;

    // Asked for many kinds at one spot after another.
    private Interval BedAt(Spot spot)
    {
        if (!ReferenceEquals(spot, _bed.Spot)) _bed = (spot, StiffnessData.Bed(spot));
        return _bed.Bed;
    }

    private CaseForces[]? Solve(IReadOnlyList<int> used, Interval fixing, Interval bed, bool play)
    {
        var holes = used.Select(i => bracket.Plate.Holes[i]).ToArray();
        var cases = new CaseForces[bracket.Cases.Count];
        for (int c = 0; c < cases.Length; c++)
        {
            if (Case(bracket.Cases[c], holes, fixing, bed, play) is not { } forces) return null;
            cases[c] = forces;
        }
        return cases;
    }

    private CaseForces? Case(LoadCase load, Point[] holes, Interval fixing, Interval bed, bool play)
    {
        var worst = new double[holes.Length];
        double contact = 0;
        foreach (double k in (ReadOnlySpan<double>)[fixing.Low, fixing.High])
        {
            foreach (double kb in (ReadOnlySpan<double>)[bed.Low, bed.High])
            {
                if (!Corner(load.Design, holes, k, new Bed(kb), worst, ref contact)) return null;
            }
        }
        var (share, cov) = MeanShare(load);
        return Shear(load.Design, holes, play) is { } shear ? new(load, worst, shear, contact, _toe, _prying, share, cov) : null;
    }

    /// <summary>Elastic vector method; where bolts have play in their holes any one may have to take it all. Null when it could turn.</summary>
    private static double[]? Shear(Wrench design, Point[] holes, bool play)
    {
        var points = holes.Select(h => new ShearPoint(h.X, h.Y)).ToArray();
        double all = Math.Sqrt(design.Vx * design.Vx + design.Vy * design.Vy);
        if (points.Length == 1) return Math.Abs(design.Tz + points[0].Y * design.Vx - points[0].X * design.Vy) <= all * TurnsByMm ? [all] : null;
        if (play) return [.. points.Select((_, i) => ShearGroup.WithPlay(points, i, design.Vx, design.Vy, design.Tz))];
        var forces = new ShearForce[points.Length];
        return ShearGroup.TrySolve(points, design.Vx, design.Vy, design.Tz, forces) ? [.. forces.Select(f => f.Size)] : null;
    }

    private bool Corner(Wrench design, Point[] holes, double stiffness, Bed bed, double[] worst, ref double contact)
    {
        Span<FixingPoint> points = stackalloc FixingPoint[holes.Length];
        for (int i = 0; i < holes.Length; i++) points[i] = new(holes[i].X, holes[i].Y, stiffness);
        Span<double> tension = stackalloc double[holes.Length];
        var answer = ContactSolver.Solve(_plate, points, bed, new(design.N, design.Mx, design.My), tension);
        if (answer.Status != ContactStatus.Balanced) return false;
        for (int i = 0; i < holes.Length; i++) worst[i] = Math.Max(worst[i], tension[i]);
        contact = Math.Max(contact, answer.Contact);
        return true;
    }

    private readonly ToeArea _toe = new(Plate.Of([.. bracket.Plate.Outline.Select(p => new Corner(p.X, p.Y))]).Area,
        toeStrip ? bracket.Plate.Outline.Max(p => p.X) - bracket.Plate.Outline.Min(p => p.X) : 0);

    private readonly double _prying = Prying.Factor(bracket.Plate.ThicknessMm);

    /// <summary>Mean of the load over its design value, and its coefficient of variation, from the larger of shear and pull.</summary>
    private static (double Share, double Cov) MeanShare(LoadCase c)
    {
        double g = Size(c.Permanent), q = Size(c.Variable), d = Size(c.Design);
        if (d <= 0) return (0, 0);
        double qMean = q / (1 + Fractile95 * c.VariableCov), mean = g + qMean;
        double sd = Math.Sqrt(g * PermanentCov * g * PermanentCov + qMean * c.VariableCov * qMean * c.VariableCov);
        return (mean / d, mean > 0 ? sd / mean : 0);
    }

    /// <summary>Size of a wrench: forces and moments on one scale, at a lever of 100 mm.</summary>
    internal static double Size(Wrench w) =>
        Math.Sqrt(w.N * w.N + w.Vx * w.Vx + w.Vy * w.Vy + (w.Mx * w.Mx + w.My * w.My + w.Tz * w.Tz) / 1e4);

    private static IEnumerable<Point> Outline(BracketPlate plate, bool strip)
    {
        if (!strip) return plate.Outline;
        double bottom = plate.Outline.Min(p => p.Y);
        return plate.Outline.Select(p => p.Y <= bottom + 1 ? p with { Y = p.Y - ToeArea.StripMm } : p);
    }
}
