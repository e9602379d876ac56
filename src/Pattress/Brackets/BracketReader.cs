using Pattress.Jobs.Doors;
using Pattress.Quantities;

namespace Pattress.Brackets;

/// <summary>The strict way in for bracket documents.</summary>
internal static class BracketReader
{
    internal const int MostCorners = 200, MostRings = 20, MostFixings = 64;

    /// <summary>Ranges taken where no stiffness is given, N/mm and N/mm³: assumed, nobody has published values.</summary>
    internal const double SoftFixing = 200, StiffFixing = 5000, SoftBed = 0.5, StiffBed = 10;

    private static readonly Shape Place = new QuantityShape(Dimension.LengthMm, -5000, 5000);
    private static readonly Shape Ring = new ListShape(new PointShape(Place), 3, MostCorners);
    private static readonly Shape Stiffness = new QuantityShape(Dimension.StiffnessNPerMm, 1e-3, 1e7);
    private static readonly Shape Modulus = new QuantityShape(Dimension.BedNPerMm3, 1e-4, 1e6);
    private static readonly Shape Force = new QuantityShape(Dimension.ForceN, -1e6, 1e6);
    private static readonly Shape Cap = new QuantityShape(Dimension.ForceN, 1e-3, 1e9);
    private static readonly Shape Moment = new QuantityShape(Dimension.MomentNmm, -1e10, 1e10);
    private static readonly Shape YesNo = new WordShape("yes", "no");

    private static readonly ObjectShape Fixing = new(
        Field.Required("x_mm", Place),
        Field.Required("y_mm", Place),
        Field.Optional("stiffness_n_per_mm", Stiffness, "Left out: an assumed range."),
        Field.Optional("stiffness_range_n_per_mm", new ListShape(Stiffness, 2, 2), "From, to: the worst within is reported too."),
        Field.Optional("gap_mm", new QuantityShape(Dimension.LengthMm, 0, 50), "Slack before it pulls."),
        Field.Optional("pre_tension_n", new QuantityShape(Dimension.ForceN, 0, 1e6)),
        Field.Optional("tension_cap_n", Cap, "Tension at which it yields and redistributes."),
        Field.Optional("slot_deg", new QuantityShape(Dimension.AngleDeg, -360, 360), "Direction in which its slot lets it slide."));

    private static readonly ObjectShape Load = new(
        Field.Optional("n_n", Force, "Pull off the wall."),
        Field.Optional("mx_nmm", Moment, "Pull times x."),
        Field.Optional("my_nmm", Moment, "Pull times y."),
        Field.Optional("vx_n", Force, "Shear to the right."),
        Field.Optional("vy_n", Force, "Shear up."),
        Field.Optional("tz_nmm", Moment, "Twist in the wall's plane, anticlockwise."));

    internal static ObjectShape Document { get; } = new(
        Field.Required("outline_mm", Ring),
        Field.Optional("further_outlines_mm", new ListShape(Ring, 0, MostRings), "Other feet of the same plate."),
        Field.Optional("holes_mm", new ListShape(Ring, 0, MostRings), "Holes and slots in the plate."),
        Field.Required("fixings", new ListShape(Fixing, 0, MostFixings)),
        Field.Optional("bed_n_per_mm3", Modulus, "Left out: an assumed range."),
        Field.Optional("bed_range_n_per_mm3", new ListShape(Modulus, 2, 2)),
        Field.Optional("pressure_cap_mpa", new QuantityShape(Dimension.StressMpa, 1e-4, 1e6), "Pressure at which the board crushes."),
        Field.Optional("plate_thickness_mm", new QuantityShape(Dimension.LengthMm, 0.1, 500), "For the allowance for prying."),
        Field.Optional("play", YesNo, "The holes are larger than the fixings."),
        Field.Required("load", Load));

    internal static BracketCase? Build(Entry e, ProblemList problems)
    {
        var rings = BracketRings.Read(e, problems);
        BracketRings.CheckRanges(e, problems);
        if (!problems.IsEmpty || rings is null) return null;
        var fixings = e.ItemsOf("fixings").Select(FixingOf).ToList();
        var (bed, bedRange) = BedOf(e);
        return new BracketCase(
            rings.Value.Plate, rings.Value.Outline, fixings, bed, bedRange, LoadOf(e["load"]!),
            e.MaybeNumber("plate_thickness_mm"), e.TextOr("play", "no") == "yes", Assumed(e));
    }

    private static BracketFixing FixingOf(Entry f)
    {
        var range = Range(f, "stiffness_n_per_mm", "stiffness_range_n_per_mm", SoftFixing, StiffFixing);
        double k = f.MaybeNumber("stiffness_n_per_mm") ?? Math.Sqrt(range!.Value.Low * range.Value.High);
        var point = new FixingPoint(
            f.NumberOf("x_mm"), f.NumberOf("y_mm"), k, f.NumberOr("gap_mm", 0), f.NumberOr("pre_tension_n", 0),
            f.NumberOr("tension_cap_n", double.PositiveInfinity));
        return new BracketFixing(point, range, f.MaybeNumber("slot_deg"));
    }

    private static (Bed Bed, (double Low, double High)? Range) BedOf(Entry e)
    {
        var range = Range(e, "bed_n_per_mm3", "bed_range_n_per_mm3", SoftBed, StiffBed);
        double k = e.MaybeNumber("bed_n_per_mm3") ?? Math.Sqrt(range!.Value.Low * range.Value.High);
        return (new Bed(k, e.NumberOr("pressure_cap_mpa", double.PositiveInfinity)), range);
    }

    private static (double Low, double High)? Range(Entry e, string one, string range, double low, double high)
    {
        var items = e.ItemsOf(range);
        return items.Count == 2 ? (items[0].Number, items[1].Number) : e[one] is null ? (low, high) : null;
    }

    private static BracketLoad LoadOf(Entry l) => new(
        l.NumberOr("n_n", 0), l.NumberOr("mx_nmm", 0), l.NumberOr("my_nmm", 0),
        l.NumberOr("vx_n", 0), l.NumberOr("vy_n", 0), l.NumberOr("tz_nmm", 0));

    private static List<Reason> Assumed(Entry e)
    {
        var list = new List<Reason> { new("friction_ignored"), new("plate_taken_rigid") };
        if (e.ItemsOf("fixings").Any(f => f["stiffness_n_per_mm"] is null && f["stiffness_range_n_per_mm"] is null))
            list.Add(new("fixing_stiffness_assumed", Said.Plain(SoftFixing), Said.Plain(StiffFixing)));
        if (e["bed_n_per_mm3"] is null && e["bed_range_n_per_mm3"] is null)
            list.Add(new("bed_stiffness_assumed", Said.Plain(SoftBed), Said.Plain(StiffBed)));
        if (e.MaybeNumber("plate_thickness_mm") is { } t) list.Add(new("prying_assumed", Said.Plain(Prying.Factor(t))));
        return list;
    }
}
