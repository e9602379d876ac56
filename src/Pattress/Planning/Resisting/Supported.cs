using Pattress.Fixings;
using Pattress.Strength.Mechanisms;
using Pattress.Working;

namespace Pattress.Planning.Resisting;

/// <summary>Fixings whose thread sits in timber, thin steel, masonry or a dab.</summary>
internal static class Supported
{
    /// <summary>Layers that bear on a screw.</summary>
    private static readonly string[] Bearing = ["board", "skim"];

    public static FixingCarries Timber(Asked a, Trace? trace)
    {
        double t_support = trace.LookUp("t_support", a.Spot.SupportDepth.Mean, "mm", Factors.Assumed + "support_depth"), l = a.Size.LengthMm, t_plate = a.PlateMm, t_face = a.Spot.Face.Mean;
        double l_wood = trace.Step("l_wood", Math.Min(l - t_plate - t_face, t_support), "mm", "geometry: thread in the wood", [In.Of(l), In.Of(t_plate), In.Of(t_face), In.Of(t_support)], "Min(l - t_plate - t_face, t_support)");
        var screw = new WoodScrewInput(a.Size.ScrewMm, a.Core(trace), l_wood, t_face, Factors.Value("timber_edge_mm", "a_4", "mm", trace), Factors.Value("timber_rho_k", "rho_k", "kg/m³", trace),
            a.Duration, a.Settings.ServiceClass, t_plate, Set: a.Set, StandIns: a.StandIns, BoardBears: Bears(a.Spot), Damp: a.Damp);
        var pull = WoodScrew.InTension(screw, trace);
        return Both(a, a.Spot.AlongGrain ? [.. pull.Select(r => AlongGrain(r, a, trace))] : pull, WoodScrew.InShear(screw, trace), 2, Toe(a, trace), trace);
    }

    /// <summary>
    /// Along the grain a thread holds less. EN 1995-1-1 (8.38) ends at 30° to it, so a share of the hold square to it is assumed; NDS 2018
    /// has no withdrawal from end grain for screws at all.
    /// </summary>
    private static MechanismResult AlongGrain(MechanismResult r, Asked a, Trace? trace)
    {
        if (r.Mechanism != "withdrawal" || !r.Design.Covered) return r;
        if (a.Set == RuleSet.UnitedStates) return MechanismResult.None(r.Mechanism, new("NDS 2018 12.2.2", "end_grain"));
        double R_d = r.Design.Value, k_grain = Factors.Value("end_grain_share", "k_grain", "", trace);
        return r with
        {
            Design = trace.Step("R_d_grain", k_grain * R_d, "N", "beyond EN 1995-1-1:2004+A1:2008 (8.38), alpha = 0", [In.Of(k_grain), In.Of(R_d)]),
            MeanN = k_grain * r.MeanN,
            Basis = Strength.Mechanisms.Basis.Assumed,
        };
    }

    /// <summary>Sound board in one piece bears on a screw; plaster on laths, tiles and foam do not.</summary>
    private static bool Bears(Spot spot) => spot.Layers.Any(l => l.Material == "board") && spot.Layers.TakeWhile(l => l.Material != "timber").All(l => Bearing.Contains(l.Material));

    public static FixingCarries Steel(Asked a, Trace? trace)
    {
        bool stud = a.Spot.Behind == Behind.SteelStud;
        string member = !stud ? "lintel" : a.Set == RuleSet.UnitedStates ? "american_stud" : "stud";
        double t = Factors.Value(member + "_sheet_mm", "t_sheet", "mm", trace), f_u = Factors.Value(member + "_f_u", "f_u", "N/mm²", trace);
        var screw = new SteelStudScrewInput(a.Size.ScrewMm, a.Core(trace), Factors.Value("steel_screw_pitch_mm", "p", "mm", trace), t, a.Spot.Face.Mean, f_u, a.PlateMm, Restrained: !stud, Set: a.Set, StandIns: a.StandIns);
        return Both(a, SteelStudScrew.InTension(screw, trace), SteelStudScrew.InShear(screw, trace), 1, Toe(a, trace), trace);
    }

    /// <summary>A plug or sleeve; its depth in sound material is what the screw reaches, no more than the size wants.</summary>
    public static FixingCarries Masonry(Asked a, Trace? trace)
    {
        bool dab = a.Spot.Behind == Behind.Dab, sleeve = a.Size.Kind.HoldsBy == HoldsBy.Sleeve;
        double reach = dab ? a.Spot.Face.Mean : a.Spot.MasonryAt.Mean;
        double arm = a.Spot.Behind is Behind.Masonry or Behind.Aerated ? InPlaster(reach, trace) : reach;
        double depth = dab ? Math.Min(a.Size.EmbedMm, a.Spot.Void.Mean) : Math.Min(a.Size.EmbedMm, a.Size.LengthMm - a.PlateMm - reach);
        var plug = new MasonryPlugInput(Base(a.Spot, dab), a.Size.HoleMm, depth, a.Core(trace), arm, a.Duration, SiteTestRk: OnSiteTests.Tested(a, Material(a.Spot, dab), depth), Sleeve: sleeve);
        var pull = OnSiteTests.Lowered(MasonryPlug.InTension(plug, trace), a, Material(a.Spot, dab), trace);
        var shear = OnSiteTests.Lowered(MasonryPlug.InShear(plug, 0, trace), a, Material(a.Spot, dab), trace);
        if (plug.SiteTestRk is null) (pull, shear) = (InUse(pull, a, trace), InUse(shear, a, trace));
        pull = [.. pull.Select(r => OnClaims.Capped(r, "tension", a, 1, trace))];
        return Both(a, pull, shear, 1, dab || sleeve ? Toe(a, trace) : double.PositiveInfinity, trace);
    }

    private static readonly Dictionary<string, double> Use = CsvTable.FromEmbedded("data/strength/use_in_masonry.csv").Rows
        .ToDictionary(r => r["kind"], r => r.Number("use"), StringComparer.Ordinal);

    /// <summary>What the masonry holds of a kind that is made for board as well.</summary>
    private static IReadOnlyList<MechanismResult> InUse(IReadOnlyList<MechanismResult> results, Asked a, Trace? trace)
    {
        if (!Use.TryGetValue(a.Size.Kind.Id, out double use)) return results;
        double k = trace.LookUp("k", use, "", Factors.Assumed + "use_in_masonry");
        return [.. results.Select(r => r.Mechanism is "pull_out_masonry" or "bearing_masonry" ? OnBoard.Scaled(r, k, trace) : r)];
    }

    /// <summary>Plaster in which the plug itself, set flush, still steadies the screw; beyond it the screw bends.</summary>
    private static double InPlaster(double reach, Trace? trace)
    {
        double steadied = Factors.Value("plug_in_plaster_mm", "steadied", "mm", trace);
        return trace.Step("arm", Math.Max(reach - steadied, 0), "mm", "mechanics: arm beyond the flush plug", [In.Of(reach), In.Of(steadied)], "Max(reach - steadied, 0)");
    }

    /// <summary>The least of each direction, at the level of the job's set: design values, or allowable ones.</summary>
    internal static FixingCarries Both(Asked a, IReadOnlyList<MechanismResult> pull, IReadOnlyList<MechanismResult> shear, double exponent, double toe, Trace? trace)
    {
        var (t, whyT) = Resistances.Least(AllowableStress.For(a.Set, pull, trace));
        var (v, whyV) = Resistances.Least(AllowableStress.For(a.Set, shear, trace));
        return new(t, v, exponent, toe, double.PositiveInfinity, whyT ?? whyV);
    }

    internal static double Toe(Asked a, Trace? trace) => AllowableStress.For(a.Set, [Board.Toe(a.Damp, a.Duration, trace)], trace)[0].Design.Value;

    /// <summary>The material as a test names it.</summary>
    private static string Material(Spot spot, bool dab) => dab ? "dab" : spot.Base is "brick" or "dense_block" or "concrete" ? spot.Base : "aerated_block";

    private static Masonry Base(Spot spot, bool dab) => dab ? Strength.Mechanisms.Masonry.Dab : spot.Base switch
    {
        "brick" => Strength.Mechanisms.Masonry.Brick,
        "dense_block" => Strength.Mechanisms.Masonry.DenseBlock,
        "concrete" => Strength.Mechanisms.Masonry.Concrete,
        _ => Strength.Mechanisms.Masonry.AeratedBlock,
    };
}
