using static Pattress.Walls.RateTable;

namespace Pattress.Supports;

/// <summary>
/// How trustworthy each kind of reading is. Defaults from <c>data/walls/rates.csv</c>, nearly all assumed;
/// probabilities in 0..1, lengths in mm, false hits per mm.
/// </summary>
public sealed record LineRates
{
    public double TapSolidOn { get; init; } = Value("tap_solid_on");

    public double TapSolidOff { get; init; } = Value("tap_solid_off");

    /// <summary>Distance outside the support's edge at which the sound has half changed.</summary>
    public double TapEdgeMm { get; init; } = Value("tap_edge_mm");

    public double TapBlurMm { get; init; } = Value("tap_blur_mm");

    public double TapReachMm { get; init; } = Value("tap_reach_mm");

    /// <summary>Taps closer than this share their evidence.</summary>
    public double TapAlikeMm { get; init; } = Value("tap_alike_mm");

    public double PatchPerMm { get; init; } = Value("patch_per_m") / 1000;

    public double PatchLengthMm { get; init; } = Value("patch_length_mm");

    public double PatchSolid { get; init; } = Value("patch_solid");

    public double TapDullWeight { get; init; } = Value("tap_dull_weight");

    public double TapHighDab { get; init; } = Value("tap_high_dab");

    public double TapHighStud { get; init; } = Value("tap_high_stud");

    public double MagnetFinds { get; init; } = Value("magnet_finds");

    public double MagnetSdMm { get; init; } = Value("magnet_sd_mm");

    public double MagnetReachMm { get; init; } = Value("magnet_reach_mm");

    public double MagnetFalsePerMm { get; init; } = Value("magnet_false_per_m") / 1000;

    /// <summary>Hits of two sweeps over one stretch that lie nearer than this are one screw.</summary>
    public double MagnetSameMm { get; init; } = Value("magnet_same_mm");

    public double SteelLineMm { get; init; } = Value("steel_line_mm");

    public double SteelLineSdMm { get; init; } = Value("steel_line_sd_mm");

    /// <summary>Where a sweep finds a steel stud at all, the chance that it finds both its screw lines.</summary>
    public double SteelBothLines { get; init; } = Value("steel_both_lines");

    public double ScrewSpacingMm { get; init; } = Value("screw_spacing_mm");

    public double HoleMeetsOn { get; init; } = Value("hole_meets_on");

    public double HoleMeetsOff { get; init; } = Value("hole_meets_off");

    /// <summary>Chance that a hole in a stud wall is felt as dab or masonry.</summary>
    public double HoleDabOff { get; init; } = Value("hole_dab_off");

    /// <summary>Share of holes into a steel stud that are noted as metal.</summary>
    public double HoleMetalSteel { get; init; } = Value("hole_metal_steel");

    /// <summary>Laths or foam, masonry: chance that it is noted over a support, as a share of that beside one.</summary>
    public double HolePassedOn { get; init; } = Value("hole_passed_on");

    public double HoleMasonryOn { get; init; } = Value("hole_masonry_on");

    /// <summary>Walls on dabs: what a hole into a dab, and beside one, is felt as.</summary>
    public double DabMeetsOn { get; init; } = Value("dab_meets_on");

    public double DabMasonryOn { get; init; } = Value("dab_masonry_on");

    public double DabMeetsOff { get; init; } = Value("dab_meets_off");

    public double DabMasonryOff { get; init; } = Value("dab_masonry_off");

    public double DabVoidOff { get; init; } = Value("dab_void_off");

    /// <summary>Chance that a hole in a dab wall is felt as a support.</summary>
    public double DabSupport { get; init; } = Value("dab_support");

    /// <summary>How much of its evidence for dabs a high or hollow tap counts for: the sound of one wall hardly varies.</summary>
    public double TapHighShare { get; init; } = Value("tap_high_share");

    public double DetectorOn { get; init; } = Value("detector_on");

    public double DetectorOff { get; init; } = Value("detector_off");

    public double DetectorReachMm { get; init; } = Value("detector_reach_mm");

    /// <summary>How much likelier a board joint is over a support than beside one.</summary>
    public double JointRatio { get; init; } = Value("joint_ratio");

    /// <summary>No place is surer than this many to one.</summary>
    public double WeightMost { get; init; } = Value("weight_most");

    /// <summary>The table as it is shipped.</summary>
    public static LineRates Default { get; } = new();
}
