namespace Pattress.Supports;

/// <summary>A pitch (centres of supports) in mm and its share before anything is seen.</summary>
public readonly record struct PitchPrior(double Mm, double Share);

/// <summary>What is known of supports before anything is seen; defaults from <c>data/walls/line_priors.csv</c>, mostly assumed.</summary>
public sealed record LinePriors
{
    private static readonly CsvTable Table = CsvTable.FromEmbedded("data/walls/line_priors.csv");

    public IReadOnlyList<PitchPrior> Pitches { get; init; } = ReadPitches("pitch_");

    /// <summary>Share of walls without a single datum.</summary>
    public double RenewalShare { get; init; } = Value("renewal_share");

    public double SteelShare { get; init; } = Value("steel_share");

    public double Presence { get; init; } = Value("presence");

    public double ExtraPerBay { get; init; } = Value("extra_per_bay");

    public double ExtraClearMm { get; init; } = Value("extra_clear_mm");

    public double JitterSdMm { get; init; } = Value("jitter_sd_mm");

    public double JitterWideSdMm { get; init; } = Value("jitter_wide_sd_mm");

    public double JitterWideShare { get; init; } = Value("jitter_wide_share");

    public double DatumLeft { get; init; } = Value("datum_left");

    public double DatumRight { get; init; } = Value("datum_right");

    /// <summary>Ceilings: share of these datums that holds, since joists are set out for the house and not for one room of it.</summary>
    public double CeilingDatum { get; init; } = Value("ceiling_datum");

    public double DatumSdMm { get; init; } = Value("datum_sd_mm");

    public double DatumWideSdMm { get; init; } = Value("datum_wide_sd_mm");

    public double DatumWideShare { get; init; } = Value("datum_wide_share");

    /// <summary>Chance of a stud at each end of the wall.</summary>
    public double EndStud { get; init; } = Value("end_stud");

    public double EndSdMm { get; init; } = Value("end_sd_mm");

    public double Trimmer { get; init; } = Value("trimmer");

    public double TrimmerDoubled { get; init; } = Value("trimmer_doubled");

    public double TimberWidthMm { get; init; } = Value("timber_width_mm");

    public double SteelWidthMm { get; init; } = Value("steel_width_mm");

    public double EdgeDistanceMm { get; init; } = Value("edge_distance_mm");

    /// <summary>Chance that the wall is board on dabs; taken up only when a reading points that way.</summary>
    public double DabShare { get; init; } = Value("dab_share");

    public double DabWidthMm { get; init; } = Value("dab_width_mm");

    public double DabJitterSdMm { get; init; } = Value("dab_jitter_sd_mm");

    /// <summary>Ceilings: chance that the line runs along the joists.</summary>
    public double ParallelShare { get; init; } = Value("parallel_share");

    /// <summary>Chance that a line along the joists (or up a wall) lies on one all along.</summary>
    public double AlongShare { get; init; } = Value("along_share");

    /// <summary>Up the wall: chance of a row of noggins at mid height, its spread; where boards laid across join; of one more anywhere.</summary>
    public double NogginMid { get; init; } = Value("noggin_mid");

    public double NogginSdMm { get; init; } = Value("noggin_sd_mm");

    public double NogginJoint { get; init; } = Value("noggin_joint");

    public double NogginJointSdMm { get; init; } = Value("noggin_joint_sd_mm");

    public double NogginAny { get; init; } = Value("noggin_any");

    /// <summary>Chance that a row met in one bay goes on in another (as counts it weighs 2 bays), and that it does so in line.</summary>
    public double NogginGoesOn { get; init; } = Value("noggin_goes_on");

    public double NogginInLine { get; init; } = Value("noggin_in_line");

    /// <summary>Share of noggins to which the board is screwed as to a stud.</summary>
    public double NogginScrewed { get; init; } = Value("noggin_screwed");

    public double BoardWidthMm { get; init; } = Value("board_width_mm");

    /// <summary>Up the wall: chance of battens across at a regular pitch instead.</summary>
    public double BattenShare { get; init; } = Value("batten_share");

    public double GapSdMm { get; init; } = Value("gap_sd_mm");

    public double GapAnyShare { get; init; } = Value("gap_any_share");

    /// <summary>Least and greatest gap of a wall without a datum.</summary>
    public double GapShortestMm { get; init; } = Value("gap_shortest_mm");

    public double GapLongestMm { get; init; } = Value("gap_longest_mm");

    /// <summary>Grids of dabs, with the share of each.</summary>
    public IReadOnlyList<PitchPrior> DabPitches { get; init; } = ReadPitches("dab_pitch_");

    /// <summary>Chance that a place of the grid holds its dab, of one more between two, and how far that is clear of them.</summary>
    public double DabPresence { get; init; } = Value("dab_presence");

    public double DabExtra { get; init; } = Value("dab_extra");

    public double DabClearMm { get; init; } = Value("dab_clear_mm");

    /// <summary>The table as it is shipped.</summary>
    public static LinePriors Default { get; } = new();

    private static double Value(string name) => Table.Rows.First(r => r["name"] == name).Number("value");

    private static IReadOnlyList<PitchPrior> ReadPitches(string name) =>
        [.. Table.Rows.Where(r => r["name"].StartsWith(name, StringComparison.Ordinal)).Select(r =>
            new PitchPrior(double.Parse(r["name"].AsSpan(name.Length), System.Globalization.CultureInfo.InvariantCulture), r.Number("value")))];
}
