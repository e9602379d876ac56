using Pattress.Jobs.Doors;
using Pattress.Quantities;

namespace Pattress.Actions.Beams;

/// <summary>The strict way in for beam documents.</summary>
internal static class BeamReader
{
    internal const int MostSupports = 64, MostLoads = 200, MostParts = 50;

    private static readonly Shape Place = new QuantityShape(Dimension.LengthMm, 0, 50_000);
    private static readonly Shape Length = new QuantityShape(Dimension.LengthMm, 1, 50_000);
    private static readonly Shape Ei = new QuantityShape(Dimension.BendingStiffnessNmm2, 1, 1e14);
    private static readonly Shape Stiffness = new QuantityShape(Dimension.StiffnessNPerMm, 1e-3, 1e9);
    private static readonly Shape PerLength = new QuantityShape(Dimension.LineLoadNPerMm, -1e5, 1e5);
    private static readonly Shape Force = new QuantityShape(Dimension.ForceN, -1e6, 1e6);
    private static readonly Shape YesNo = new WordShape("yes", "no");

    private static readonly ObjectShape Support = new(
        Field.Required("at_mm", Place),
        Field.Optional("stiffness_n_per_mm", Stiffness, "Left out: rigid."),
        Field.Optional("stiffness_range_n_per_mm", new ListShape(Stiffness, 2, 2), "From, to: the extremes within are reported too."),
        Field.Optional("clamped", YesNo, "Holds the slope too."),
        Field.Optional("one_sided", YesNo, "A cup: the rail can lift off."),
        Field.Optional("settlement_mm", new QuantityShape(Dimension.LengthMm, -100, 100), "How far it stands below the line."));

    private static readonly VariantShape Load = new("kind", [],
    [
        new("uniform", Field.Required("from_mm", Place), Field.Required("to_mm", Place), Field.Required("n_per_mm", PerLength)),
        new("point", Field.Required("at_mm", Place), Field.Required("n", Force)),
    ]);

    private static readonly ObjectShape Moving = new(Field.Required("length_mm", Length), Field.Required("n_per_mm", PerLength));

    internal static ObjectShape Document { get; } = new(
        Field.Required("length_mm", Length),
        Field.Optional("ei_nmm2", Ei, "Bending stiffness; or stretches."),
        Field.Optional("stretches", new ListShape(new ObjectShape(Field.Required("length_mm", Length), Field.Required("ei_nmm2", Ei)), 1, MostParts)),
        Field.Optional("hinges_mm", new ListShape(Place, 0, MostParts), "Joints that carry no moment."),
        Field.Required("supports", new ListShape(Support, 1, MostSupports)),
        Field.Optional("loads", new ListShape(Load, 0, MostLoads), "Standing loads, downwards positive."),
        Field.Optional("moving", Moving, "A load that can stand anywhere, such as a stack of curtain."),
        Field.Optional("moving_second", Moving, "A second one that does not overlap the first."),
        Field.Optional("creep_factor", new NumberShape(0, 10), "Deflection under lasting load grows by this share."),
        Field.Optional("creep_material", new WordShape(Creep.Materials), "Instead of a factor: k_def of EN 1995-1-1 Table 3.2."),
        Field.Optional("service_class", new IntegerShape(1, 3), "EN 1995-1-1 2.3.1.3, for creep_material; 1 where left out."));

    internal static BeamCase? Build(Entry e, ProblemList problems)
    {
        BeamChecks.Run(e, problems);
        if (!problems.IsEmpty) return null;
        var supports = e.ItemsOf("supports");
        var ranges = supports.Select(RangeOf).ToList();
        return new BeamCase(
            new Beam(Stretches(e), [.. supports.Select(SupportOf)], [.. e.ItemsOf("hinges_mm").Select(h => h.Number)]),
            Loads(e), MovingOf(e), ranges.Any(r => r.Low < r.High) ? ranges : null, e.MaybeNumber("creep_factor") ?? CreepOf(e));
    }

    private static double? CreepOf(Entry e) =>
        e.MaybeText("creep_material") is { } material ? Creep.Factor(material, (int)e.NumberOr("service_class", 1)) : null;

    private static List<BeamStretch> Stretches(Entry e) => e["stretches"] is { } list
        ? [.. list.Items.Select(s => new BeamStretch(s.NumberOf("length_mm"), s.NumberOf("ei_nmm2")))]
        : [new(e.NumberOf("length_mm"), e.NumberOf("ei_nmm2"))];

    private static BeamSupport SupportOf(Entry s) => new(
        s.NumberOf("at_mm"), Middle(s), s.TextOr("clamped", "no") == "yes", s.TextOr("one_sided", "no") == "yes", s.NumberOr("settlement_mm", 0));

    private static double Middle(Entry s) =>
        s.MaybeNumber("stiffness_n_per_mm") ?? (RangeOf(s) is var (low, high) && double.IsFinite(low) ? Math.Sqrt(low * high) : double.PositiveInfinity);

    private static SupportStiffness RangeOf(Entry s)
    {
        double k = s.NumberOr("stiffness_n_per_mm", double.PositiveInfinity);
        return s["stiffness_range_n_per_mm"] is { Items: [var low, var high] } ? new(low.Number, high.Number) : new(k, k);
    }

    private static BeamLoads Loads(Entry e)
    {
        var loads = e.ItemsOf("loads");
        return new BeamLoads(
            [.. loads.Where(l => l.TextOf("kind") == "uniform").Select(l => new UniformLoad(l.NumberOf("from_mm"), l.NumberOf("to_mm"), l.NumberOf("n_per_mm")))],
            [.. loads.Where(l => l.TextOf("kind") == "point").Select(l => new PointLoad(l.NumberOf("at_mm"), l.NumberOf("n")))]);
    }

    private static MovingLoads? MovingOf(Entry e) =>
        e["moving"] is { } first ? new(Patch(first), e["moving_second"] is { } second ? Patch(second) : null) : null;

    private static PatchLoad Patch(Entry m) => new(m.NumberOf("length_mm"), m.NumberOf("n_per_mm"));
}
