using Pattress.Fixings;
using Pattress.Strength.Mechanisms;
using Pattress.Working;

namespace Pattress.Planning.Resisting;

/// <summary>Fixings that board, laths or a thin panel holds alone.</summary>
internal static class OnBoard
{
    /// <summary>Studs when no pitch is known, mm (common practice, no source).</summary>
    private const double SpanMm = 600;

    /// <summary>No collar is counted wider than this, mm (assumed).</summary>
    private const double CollarMostMm = 12;

    /// <summary>Laths and plaster against plasterboard of the same thickness; a thin panel of wood (assumed).</summary>
    private const double LathShare = 0.5, PanelShare = 1.5;

    private static readonly Dictionary<string, double> Use = CsvTable.FromEmbedded("data/strength/use_of_bearing.csv").Rows
        .ToDictionary(r => r["kind"], r => r.Number("use"), StringComparer.Ordinal);

    public static FixingCarries Carries(Asked a, Trace? trace)
    {
        var board = Input(a);
        double share = a.Spot.Base switch { "lath_plaster" => LathShare, "panel" => PanelShare, _ => 1 };
        var pull = Scaled(board.Bearing > board.Shank ? Board.Punching(board, trace) : Board.ThreadShear(board, trace), Used(a) * share * Creep(a), trace);
        var shear = Scaled(Board.Bearing(board, trace), share, trace);
        pull = OnTrials.Rests(pull, "tension", board, a, Creep(a), trace);
        shear = OnTrials.Rests(shear, "shear", board, a, 1, trace);
        var bending = Mechanism.Governing(AllowableStress.For(a.Set, [BoardBending.Flexure(board with { Group = 1 }, trace), BoardOwnSupports.Leaving(board with { Group = 1 }, trace)], trace));
        return Supported.Both(a, [pull], [shear], 1, Supported.Toe(a, trace), trace) with { BendingN = (bending?.Design.Value ?? double.PositiveInfinity) * share };
    }

    private static BoardInput Input(Asked a) => new(
        a.Spot.Face.Mean, Bearing(a), Shank(a.Size), SpanMm, a.Duration, a.Damp, Group: a.Group, Spacing: a.SpacingMm, Support: a.Spot.Behind switch
        {
            Behind.BoardDabGap => BoardSupport.Dabs,
            Behind.BoardFoam => BoardSupport.Foam,
            _ => BoardSupport.Screws,
        }, Set: a.Set);

    private static double Bearing(Asked a) =>
        a.Size.Kind.HoldsBy == HoldsBy.Friction ? 0 : BoardInput.BarAsDisc(a.Size.BearsLongMm, a.Size.BearsWideMm);

    /// <summary>What fills the hole bears on its edge: the collar or straps of most kinds, the bare bolt of others.</summary>
    private static double Shank(FixingSize size) =>
        size.Kind.Id is "spring_toggle" or "hollow_wall_anchor" or "wing_driven_plug" ? size.ScrewMm : Math.Max(size.ScrewMm, Math.Min(size.HoleMm, CollarMostMm));

    /// <summary>How much of the punching strength the kind can use (assumed, by the trade's order of merit).</summary>
    private static double Used(Asked a) => Use.GetValueOrDefault(a.Size.Kind.Id, 1);

    /// <summary>Plastic under a load that lasts (assumed).</summary>
    private static double Creep(Asked a) => a.Size.Kind.Creeps && a.Duration <= Duration.Medium ? 0.8 : 1;

    internal static MechanismResult Scaled(MechanismResult r, double k, Trace? trace)
    {
        if (!r.Design.Covered) return r;
        double R_d = r.Design.Value, k_use = k;
        double R_used = trace.Step("R_used", R_d * k_use, "N", "assumed: what the kind uses of it, laths, plastic that creeps", [In.Of(R_d), In.Of(k_use)]);
        return r with { Design = R_used, MeanN = r.MeanN * k };
    }
}
