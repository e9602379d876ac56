using static Pattress.Walls.RateTable;

namespace Pattress.Walls;

/// <summary>Rates of the wall model; defaults from <c>data/walls/rates.csv</c>, assumed unless that table says otherwise.</summary>
public sealed record WallRates
{
    /// <summary>Share of walls whose sound tells well; of those whose sound tells next to nothing.</summary>
    public double TellWell { get; init; } = Value("tell_well");

    public double TellPoor { get; init; } = Value("tell_poor");

    public double TellMiddlingStrength { get; init; } = Value("tell_middling_strength");

    public double TellPoorStrength { get; init; } = Value("tell_poor_strength");

    /// <summary>Taps closer than this tell less of the build-up than they seem to, mm.</summary>
    public double TapNearMm { get; init; } = Value("tap_near_mm");

    public double Misread { get; init; } = Value("misread");

    public double HookSdMm { get; init; } = Value("hook_sd_mm");

    public double WireSdMm { get; init; } = Value("wire_sd_mm");

    public double DepthSdMm { get; init; } = Value("depth_sd_mm");

    public double TapeSdMm { get; init; } = Value("tape_sd_mm");

    public double MisreadRangeMm { get; init; } = Value("misread_range_mm");

    public double MasonryDepthTold { get; init; } = Value("masonry_depth_told");

    public double GapDepthTold { get; init; } = Value("gap_depth_told");

    /// <summary>Chance that a stiff wire in a hole without a void behind stops at once.</summary>
    public double WireStops { get; init; } = Value("wire_stops");

    public double MagnetPerMTimber { get; init; } = Value("magnet_per_m_timber");

    public double MagnetPerMSteel { get; init; } = Value("magnet_per_m_steel");

    public double MagnetPerMLath { get; init; } = Value("magnet_per_m_lath");

    public double MagnetPerMOther { get; init; } = Value("magnet_per_m_other");

    public double MagnetPerMMetal { get; init; } = Value("magnet_per_m_metal");

    public double MagnetTrust { get; init; } = Value("magnet_trust");

    /// <summary>Chance that a wall is built as the house's other walls of its kind are; that at least its family is.</summary>
    public double HouseSame { get; init; } = Value("house_same");

    public double HouseFamily { get; init; } = Value("house_family");

    public static WallRates Default { get; } = new();
}
