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

    /// <summary>Half the width of a 38 mm stud: what a centred screw has to its edge, mm.</summary>
    private const double HalfStudMm = 19;

    /// <summary>Plaster in which the plug itself, set flush, still steadies the screw; beyond it the screw bends, mm (assumed).</summary>
    private const double PlugInPlasterMm = 15;

    public static FixingCarries Timber(Asked a, Trace? trace)
    {
        double thread = Math.Min(a.Size.LengthMm - a.PlateMm - a.Spot.Face.Mean, a.Spot.SupportDepth.Mean);
        var screw = new WoodScrewInput(a.Size.ScrewMm, a.Core, thread, a.Spot.Face.Mean, HalfStudMm, RhoK, a.Duration, a.Settings.ServiceClass, a.PlateMm,
            Set: a.Settings.Standards == "us" ? RuleSet.UnitedStates : RuleSet.Eurocode);
        return Both(WoodScrew.InTension(screw, trace), WoodScrew.InShear(screw, trace), 2, Toe(a, trace));
    }

    public static FixingCarries Steel(Asked a, Trace? trace)
    {
        bool stud = a.Spot.Behind == Behind.SteelStud;
        var screw = new SteelStudScrewInput(a.Size.ScrewMm, a.Core, PitchMm, stud ? StudMm : LintelMm, a.Spot.Face.Mean, stud ? StudFu : LintelFu, a.PlateMm, Restrained: !stud);
        return Both(SteelStudScrew.InTension(screw, trace), SteelStudScrew.InShear(screw, trace), 1, Toe(a, trace));
    }

    /// <summary>A plug or sleeve; its depth in sound material is what the screw reaches, no more than the size wants.</summary>
    public static FixingCarries Masonry(Asked a, Trace? trace)
    {
        bool dab = a.Spot.Behind == Behind.Dab, sleeve = a.Size.Kind.HoldsBy == HoldsBy.Sleeve;
        double reach = dab ? a.Spot.Face.Mean : a.Spot.MasonryAt.Mean;
        double arm = a.Spot.Behind is Behind.Masonry or Behind.Aerated ? Math.Max(0, reach - PlugInPlasterMm) : reach;
        double depth = dab ? Math.Min(a.Size.EmbedMm, a.Spot.Void.Mean) : Math.Min(a.Size.EmbedMm, a.Size.LengthMm - a.PlateMm - reach);
        var plug = new MasonryPlugInput(Base(a.Spot, dab), a.Size.HoleMm, depth, a.Core, arm, a.Duration, Sleeve: sleeve);
        return Both(MasonryPlug.InTension(plug, trace), MasonryPlug.InShear(plug, 0, trace), 1, dab || sleeve ? Toe(a, trace) : double.PositiveInfinity);
    }

    internal static FixingCarries Both(IReadOnlyList<MechanismResult> pull, IReadOnlyList<MechanismResult> shear, double exponent, double toe)
    {
        var (t, whyT) = Resistances.Least(pull);
        var (v, whyV) = Resistances.Least(shear);
        return new(t, v, exponent, toe, double.PositiveInfinity, whyT ?? whyV);
    }

    internal static double Toe(Asked a, Trace? trace) => Board.Toe(a.Damp, a.Duration, trace).Design.Value;

    private static Masonry Base(Spot spot, bool dab) => dab ? Strength.Mechanisms.Masonry.Dab : spot.Base switch
    {
        "brick" => Strength.Mechanisms.Masonry.Brick,
        "dense_block" => Strength.Mechanisms.Masonry.DenseBlock,
        "concrete" => Strength.Mechanisms.Masonry.Concrete,
        _ => Strength.Mechanisms.Masonry.AeratedBlock,
    };
}
