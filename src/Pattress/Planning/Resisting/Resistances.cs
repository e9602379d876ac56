using Pattress.Actions;
using Pattress.Fixings;
using Pattress.Jobs;
using Pattress.Strength.Mechanisms;
using Pattress.Working;

namespace Pattress.Planning.Resisting;

/// <summary>What is asked of one fixing at its spot.</summary>
/// <param name="PlateMm">Thickness of the bracket's steel.</param>
/// <param name="SpacingMm">Distance to the nearest neighbour; large when it stands alone.</param>
public sealed record Asked(FixingSize Size, Spot Spot, Duration Duration, Dampness Damp, Settings Settings, double PlateMm, int Group, double SpacingMm)
{
    /// <summary>The user's own tests.</summary>
    public OwnTrials Trials { get; init; } = OwnTrials.None;

    /// <summary>The job's set of standards.</summary>
    public RuleSet Set => Settings.Standards == "us" ? RuleSet.UnitedStates : RuleSet.Eurocode;

    /// <summary>Documents of other sets or drafts that the job lets stand in.</summary>
    public StandIns StandIns => May(Settings.Editions.TimberDraft, StandIns.Draft) | May(Settings.Editions.Nds, StandIns.Nds) | May(Settings.Editions.Aisi, StandIns.Aisi);

    private static StandIns May(string edition, StandIns standIn) => edition == Editions.None ? StandIns.None : standIn;

    /// <summary>Core of the screw, mm: a share of its nominal diameter (assumed); the whole of a sleeve's solid core.</summary>
    public double Core(Trace? trace)
    {
        double d = Size.ScrewMm;
        if (Size.Kind.HoldsBy == HoldsBy.Sleeve) return trace.LookUp("d_core", d, "mm", "solid core of the sleeve");
        double k_core = Factors.Value("screw_core_share", "k_core", "", trace);
        return trace.Step("d_core", k_core * d, "mm", "mechanics: core of the screw", [In.Of(k_core), In.Of(d)]);
    }
}

/// <summary>What one fixing carries: the least over its mechanisms, by what it is set into.</summary>
public static class Resistances
{
    private const double AloneMm = 1000;

    public static FixingCarries Of(
        FixingSize size, Spot spot, Ask ask, LoadDuration duration, IReadOnlyList<Point> holes, BracketPlate plate, Trace? trace)
    {
        var damp = ask.Moisture is "damp" or "fresh_plaster" ? Dampness.Damp : Dampness.Dry;
        var asked = new Asked(size, spot, (Duration)(int)duration, damp, ask.Settings, plate.ThicknessMm, holes.Count, Spacing(holes)) { Trials = ask.Trials };
        return spot.Behind switch
        {
            Behind.Timber => Supported.Timber(asked, trace),
            Behind.SteelStud or Behind.SteelLintel => Supported.Steel(asked, trace),
            Behind.Masonry or Behind.Aerated or Behind.Dab or Behind.MasonryBehindGap => Supported.Masonry(asked, trace),
            _ => OnBoard.Carries(asked, trace),
        };
    }

    /// <summary>The least of several mechanisms as one direction of a fixing; the reason when one of them is not covered: it might be the least.</summary>
    internal static (Carries Carries, Reason? Why) Least(IReadOnlyList<MechanismResult> results)
    {
        if (results.FirstOrDefault(r => !r.Design.Covered) is { } open) return (default, open.Design.Why!.Reason);
        var least = Mechanism.Governing(results)!;
        return (new(least.Design.Value, least.MeanN, least.Variation, least.Mechanism, least.BasisCode, least.Marks), null);
    }

    internal static double Spacing(IReadOnlyList<Point> holes)
    {
        double least = AloneMm;
        for (int i = 0; i < holes.Count; i++)
            for (int j = i + 1; j < holes.Count; j++)
                least = Math.Min(least, Math.Sqrt((holes[i].X - holes[j].X) * (holes[i].X - holes[j].X) + (holes[i].Y - holes[j].Y) * (holes[i].Y - holes[j].Y)));
        return least;
    }
}
