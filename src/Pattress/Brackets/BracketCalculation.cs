namespace Pattress.Brackets;

/// <summary>From a checked bracket to its answer.</summary>
internal static class BracketCalculation
{
    internal static Outcome<BracketReport> Answer(BracketCase c)
    {
        FixingPoint[] points = [.. c.Fixings.Select(f => f.Point)];
        var tensions = new double[points.Length];
        var contact = ContactSolver.Solve(c.Plate, points, c.Bed, c.Load, tensions);
        if (Problem(contact) is { } problem) return Outcome<BracketReport>.Refused(problem);
        ShearPoint[] sideways = [.. c.Fixings.Select(f => new ShearPoint(f.Point.X, f.Point.Y, 1, f.SlotDegrees))];
        var shear = new ShearForce[points.Length];
        if (!ShearGroup.TrySolve(sideways, c.Load.Vx, c.Load.Vy, c.Load.Tz, shear)) return Outcome<BracketReport>.Refused(Slides());
        var worst = Worst(c);
        if (HasRange(c) && worst is null) return Outcome<BracketReport>.Refused(NoBalanceInRange());
        var fixings = points.Select((_, i) => Forces(c, i, tensions[i], shear[i], worst, sideways)).ToList();
        return Outcome<BracketReport>.Of(new BracketReport(fixings, contact, worst?.PressureMax, c.Assumed, Cautions(c, worst)));
    }

    private static FixingForces Forces(BracketCase c, int i, double tension, ShearForce shear, WorstCase? worst, ShearPoint[] points)
    {
        double most = Math.Max(tension, worst?.Tension[i] ?? 0);
        return new FixingForces(
            tension, shear, worst?.Tension[i],
            c.Play ? ShearGroup.WithPlay(points, i, c.Load.Vx, c.Load.Vy, c.Load.Tz) : null,
            c.PlateThickness is { } t ? most * Prying.Factor(t) : null);
    }

    private static bool HasRange(BracketCase c) => c.BedRange is not null || c.Fixings.Any(f => f.Range is not null);

    private static WorstCase? Worst(BracketCase c)
    {
        if (!HasRange(c)) return null;
        var fixings = c.Fixings.Select(f => new FixingRange(
            f.Point, f.Range?.Low ?? f.Point.Stiffness, f.Range?.High ?? f.Point.Stiffness)).ToList();
        var bed = new BedRange(c.BedRange?.Low ?? c.Bed.Modulus, c.BedRange?.High ?? c.Bed.Modulus, c.Bed.PressureCap);
        return StiffnessRange.Worst(c.Plate, fixings, bed, c.Load);
    }

    private static List<Reason> Cautions(BracketCase c, WorstCase? worst)
    {
        var list = new List<Reason>();
        for (int i = 0; i < c.Fixings.Count; i++)
            if (!Outline.Holds(c.Outline, c.Fixings[i].Point.X, c.Fixings[i].Point.Y)) list.Add(new("fixing_outside_outline", Said.Count(i + 1)));
        if (Nearest(c) is { } pair) list.Add(new("fixings_nearly_coincide", Said.Count(pair.First + 1), Said.Count(pair.Second + 1), Said.Length(Together * c.Plate.Size)));
        if (worst is { Exhaustive: false }) list.Add(new("stiffness_worst_case_searched"));
        return list;
    }

    // Two fixings so near to one another, as a share of the plate, that no bracket has them.
    private const double Together = 0.01;

    private static (int First, int Second)? Nearest(BracketCase c)
    {
        for (int i = 1; i < c.Fixings.Count; i++)
            for (int j = 0; j < i; j++)
                if (Math.Max(Math.Abs(c.Fixings[i].Point.X - c.Fixings[j].Point.X), Math.Abs(c.Fixings[i].Point.Y - c.Fixings[j].Point.Y)) < Together * c.Plate.Size)
                    return (j, i);
        return null;
    }

    private static Problem? Problem(in ContactAnswer a) => a.Status switch
    {
        ContactStatus.Balanced => null,
        ContactStatus.Mechanism => new("bracket_mechanism", "$.fixings", "no balance", "a fixing strictly inside the outline, or a load that presses the plate on"),
        ContactStatus.Overloaded => new("bracket_overloaded", "$.load", "no balance", "a load below what fixings and board carry when all have yielded"),
        _ => new("bracket_not_balanced", "$", "residual " + a.Residual.ToString("e1", System.Globalization.CultureInfo.InvariantCulture), "a residual of at most 1e-9"),
    };

    private static Problem Slides() => new(
        "shear_mechanism", "$.load", "the plate can slide or turn in its plane", "shear through a single fixing, or two fixings not in line with their slots");

    private static Problem NoBalanceInRange() => new(
        "bracket_mechanism", "$.fixings", "no balance within the stiffness ranges", "ranges within which the bracket can stand");
}
