using Pattress.Fixings;
using Pattress.Strength.Mechanisms;
using Pattress.Working;

namespace Pattress.Planning.Resisting;

/// <summary>Fixings whose thread sits in timber, thin steel, masonry or a dab.</summary>
internal static class Supported
{
    /// <summary>Characteristic density of unmarked timber, kg/m³: C16, EN 338:2016.</summary>
    private const double RhoK = 310;

    /// <summary>Sheet of a common stud and of a hollow lintel, mm; strength, N/mm² (assumed).</summary>
    private const double StudMm = 0.55, LintelMm = 1.5, StudFu = 300, LintelFu = 360, PitchMm = 1.6;

    /// <summary>The common American stud: 18 mil (25 gauge), design thickness 0.0188 in; tensile strength 45 ksi (assumed, common practice).</summary>
    private const double AmericanStudMm = 0.478, AmericanStudFu = 310;

    /// <summary>Half the width of a 38 mm stud: what a centred screw has to its edge, mm.</summary>
    private const double HalfStudMm = 19;

    /// <summary>Plaster in which the plug itself, set flush, still steadies the screw; beyond it the screw bends, mm (assumed).</summary>
    private const double PlugInPlasterMm = 15;

    public static FixingCarries Timber(Asked a, Trace? trace)
    {
        double thread = Math.Min(a.Size.LengthMm - a.PlateMm - a.Spot.Face.Mean, a.Spot.SupportDepth.Mean);
        var screw = new WoodScrewInput(a.Size.ScrewMm, a.Core, thread, a.Spot.Face.Mean, HalfStudMm, RhoK, a.Duration, a.Settings.ServiceClass, a.PlateMm,
            Set: a.Set, StandIns: a.StandIns);
        return Both(a, WoodScrew.InTension(screw, trace), WoodScrew.InShear(screw, trace), 2, Toe(a, trace), trace);
    }

    public static FixingCarries Steel(Asked a, Trace? trace)
    {
        bool stud = a.Spot.Behind == Behind.SteelStud, us = a.Set == RuleSet.UnitedStates;
        double sheet = !stud ? LintelMm : us ? AmericanStudMm : StudMm, fu = !stud ? LintelFu : us ? AmericanStudFu : StudFu;
        var screw = new SteelStudScrewInput(a.Size.ScrewMm, a.Core, PitchMm, sheet, a.Spot.Face.Mean, fu, a.PlateMm, Restrained: !stud, Set: a.Set, StandIns: a.StandIns);
        return Both(a, SteelStudScrew.InTension(screw, trace), SteelStudScrew.InShear(screw, trace), 1, Toe(a, trace), trace);
    }

    /// <summary>A plug or sleeve; its depth in sound material is what the screw reaches, no more than the size wants.</summary>
    public static FixingCarries Masonry(Asked a, Trace? trace)
    {
        bool dab = a.Spot.Behind == Behind.Dab, sleeve = a.Size.Kind.HoldsBy == HoldsBy.Sleeve;
        double reach = dab ? a.Spot.Face.Mean : a.Spot.MasonryAt.Mean;
        double arm = a.Spot.Behind is Behind.Masonry or Behind.Aerated ? Math.Max(0, reach - PlugInPlasterMm) : reach;
        double depth = dab ? Math.Min(a.Size.EmbedMm, a.Spot.Void.Mean) : Math.Min(a.Size.EmbedMm, a.Size.LengthMm - a.PlateMm - reach);
        var plug = new MasonryPlugInput(Base(a.Spot, dab), a.Size.HoleMm, depth, a.Core, arm, a.Duration, Sleeve: sleeve);
        return Both(a, MasonryPlug.InTension(plug, trace), MasonryPlug.InShear(plug, 0, trace), 1, dab || sleeve ? Toe(a, trace) : double.PositiveInfinity, trace);
    }

    /// <summary>The least of each direction, at the level of the job's set: design values, or allowable ones.</summary>
    internal static FixingCarries Both(Asked a, IReadOnlyList<MechanismResult> pull, IReadOnlyList<MechanismResult> shear, double exponent, double toe, Trace? trace)
    {
        var (t, whyT) = Resistances.Least(AllowableStress.For(a.Set, pull, trace));
        var (v, whyV) = Resistances.Least(AllowableStress.For(a.Set, shear, trace));
        return new(t, v, exponent, toe, double.PositiveInfinity, whyT ?? whyV);
    }

    internal static double Toe(Asked a, Trace? trace) => AllowableStress.For(a.Set, [Board.Toe(a.Damp, a.Duration, trace)], trace)[0].Design.Value;

    private static Masonry Base(Spot spot, bool dab) => dab ? Strength.Mechanisms.Masonry.Dab : spot.Base switch
    {
        "brick" => Strength.Mechanisms.Masonry.Brick,
        "dense_block" => Strength.Mechanisms.Masonry.DenseBlock,
        "concrete" => Strength.Mechanisms.Masonry.Concrete,
        _ => Strength.Mechanisms.Masonry.AeratedBlock,
    };
}
