using Pattress.Fixings;
using Pattress.Strength.Mechanisms;
using Pattress.Working;

namespace Pattress.Planning.Resisting;

/// <summary>Fixings that board, laths or a thin panel holds alone.</summary>
internal static class OnBoard
{
    private static readonly Dictionary<string, double> Use = CsvTable.FromEmbedded("data/strength/use_of_bearing.csv").Rows
        .ToDictionary(r => r["kind"], r => r.Number("use"), StringComparer.Ordinal);

    public static FixingCarries Carries(Asked a, Trace? trace)
    {
        var board = Input(a, trace);
        double share = Share(a, trace);
        var pull = Pulled(board.Bearing > board.Shank ? Board.Punching(board, trace) : Board.ThreadShear(board, trace), a, share, trace);
        var shear = Scaled(Board.Bearing(board, trace), share, trace);
        pull = OnTrials.Rests(pull, "tension", board, a, Creep(a, trace), trace);
        shear = OnTrials.Rests(shear, "shear", board, a, 1, trace);
        pull = OnClaims.Capped(pull, "tension", a, Creep(a, null), trace);
        shear = OnClaims.Capped(shear, "shear", a, 1, trace);
        var bending = Mechanism.Governing(AllowableStress.For(a.Set, [BoardBending.Flexure(board with { Group = 1 }, trace), BoardOwnSupports.Leaving(board with { Group = 1 }, trace)], trace));
        return Supported.Both(a, [pull], [shear], 1, Supported.Toe(a, trace), trace) with { BendingN = (bending?.Design.Value ?? double.PositiveInfinity) * share };
    }

    private static BoardInput Input(Asked a, Trace? trace) => new(
        a.Spot.Face.Mean, Bearing(a), Shank(a.Size, trace), Factors.Value("board_span_mm", "a", "mm", trace), a.Duration, a.Damp, Boards(a.Spot), Group: a.Group, Spacing: a.SpacingMm, Support: a.Spot.Behind switch
        {
            Behind.BoardDabGap => BoardSupport.Dabs,
            Behind.BoardFoam => BoardSupport.Foam,
            _ => BoardSupport.Screws,
        }, Set: a.Set);

    /// <summary>Boards one behind the other: not glued, each bends for itself.</summary>
    private static int Boards(Spot spot) => Math.Max(1, spot.Layers.Count(l => l.Material == "board"));

    private static double Bearing(Asked a) =>
        a.Size.Kind.HoldsBy == HoldsBy.Friction ? 0 : BoardInput.BarAsDisc(a.Size.BearsLongMm, a.Size.BearsWideMm);

    /// <summary>What fills the hole bears on its edge: the collar or straps of most kinds, the bare bolt of others.</summary>
    private static double Shank(FixingSize size, Trace? trace) =>
        size.Kind.Id is "spring_toggle" or "hollow_wall_anchor" or "wing_driven_plug" ? size.ScrewMm
        : Math.Max(size.ScrewMm, Math.Min(size.HoleMm, Factors.Value("collar_most_mm", "d_collar", "mm", trace)));

    /// <summary>Laths and plaster, or a thin panel of wood, against plasterboard of the same thickness (assumed).</summary>
    private static double Share(Asked a, Trace? trace) => a.Spot.Base switch
    {
        "lath_plaster" => Factors.Value("lath_share", "k_face", "", trace),
        "panel" => Factors.Value("panel_share", "k_face", "", trace),
        _ => trace.LookUp("k_face", 1, "", "gypsum board"),
    };

    /// <summary>How much of the punching strength the kind can use, by the trade's order of merit, and what plastic keeps under a load that lasts (assumed).</summary>
    private static MechanismResult Pulled(MechanismResult r, Asked a, double k_face, Trace? trace)
    {
        double k_use = trace.LookUp("k_use", Use.GetValueOrDefault(a.Size.Kind.Id, 1), "", Factors.Assumed + "use_of_bearing");
        double k_creep = Creep(a, trace);
        return Scaled(r, trace.Step("k", k_use * k_face * k_creep, "", "mechanics: what the kind uses", [In.Of(k_use), In.Of(k_face), In.Of(k_creep)]), trace);
    }

    private static double Creep(Asked a, Trace? trace) =>
        a.Size.Kind.Creeps && a.Duration <= Duration.Medium ? Factors.Value("creep_in_board", "k_creep", "", trace) : trace.LookUp("k_creep", 1, "", "metal, or a short load");

    internal static MechanismResult Scaled(MechanismResult r, double k, Trace? trace)
    {
        if (!r.Design.Covered) return r;
        double R_d = r.Design.Value;
        double R_used = trace.Step("R_used", R_d * k, "N", "mechanics: what the kind and the face use of it", [In.Of(R_d), In.Of(k)]);
        return r with { Design = R_used, MeanN = r.MeanN * k };
    }
}
