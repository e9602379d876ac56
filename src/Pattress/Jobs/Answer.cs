using Pattress.Actions;
using Pattress.Working;

namespace Pattress.Jobs;

/// <summary>The three answers; in JSON <c>ready</c>, <c>check_first</c>, <c>not_here</c>. Ordered by severity.</summary>
public enum Verdict { Ready, CheckFirst, NotHere }

/// <summary>The plan of a whole job. Written by <c>PlanJson</c>, shown by command line, page and papers, which never calculate.</summary>
public sealed record PlanAnswer(
    Verdict Verdict,
    string Title,
    string ProgramVersion,
    string DataHash,
    IReadOnlyList<ItemAnswer> Items,
    IReadOnlyList<WallAnswer> Walls,
    IReadOnlyList<CheckToDo> Checks,
    IReadOnlyList<BuyLine> Buy,
    decimal BuyTotal,
    string Currency,
    IReadOnlyList<WorkStep> Order,
    IReadOnlyList<Reason> Cautions,
    IReadOnlyList<Assumption> Assumptions);

/// <summary>The answer for one thing to hang.</summary>
/// <param name="Why">The one reason of the verdict.</param>
/// <param name="Remedies">For <c>not_here</c>: what would do; for <c>check_first</c>: what settles it, best first.</param>
public sealed record ItemAnswer(
    string Id, string What, string Wall, string Name, Verdict Verdict, Reason Why, IReadOnlyList<Reason> Remedies,
    double MassKg, ConsequenceClass Class, IReadOnlyList<BracketAnswer> Brackets, double ProbabilityOfFailure, double TargetProbability,
    IReadOnlyList<Reason> Cautions, IReadOnlyList<Assumption> Assumptions);

/// <summary>The answer for one bracket. <see cref="Fixing"/> is null when no kind is feasible.</summary>
/// <param name="Fixing">Kind and size, e.g. <c>strap_toggle.medium</c>.</param>
/// <param name="Count">Fixings in this bracket.</param>
/// <param name="Utilisation">Design action over design resistance of the worst fixing.</param>
/// <param name="Governs">Code of the governing mechanism.</param>
/// <param name="ProbabilityOfFailure">Over the reference period, given the build-up planned for.</param>
/// <param name="BuildUp">Build-up planned for, with the chance that the wall is so (or that the hole meets the support).</param>
/// <param name="Basis"><c>rule</c>, <c>trial</c>, <c>mechanics</c> or <c>assumed</c>.</param>
/// <param name="NextKind">The next kind whose hole swallows this one's, should it fail; null when there is none.</param>
public sealed record BracketAnswer(
    int Index, Point At, string? Fixing, int Count, double Utilisation, string Governs, double ProbabilityOfFailure,
    string BuildUp, double BuildUpProbability, bool IntoSupport, string Basis, string? NextKind, decimal PriceEach,
    IReadOnlyList<HoleAnswer> Holes, IReadOnlyList<FixingForce> Forces, double ToePressureMpa, double ToeUtilisation, string LoadCase,
    IReadOnlyList<AlternativeAnswer> Alternatives, IReadOnlyList<RejectedAnswer> Rejected,
    WallSection Section, IReadOnlyList<Step> Working, Reason Why, double MeanToPermitted, BracketPlate Plate)
{
    /// <summary>What the chance of failure and the proof load are worked out from; null when no kind is feasible.</summary>
    public BracketOdds? Odds { get; init; }
}

/// <summary>Resistance and action of a bracket's worst fixing along its load, and the characteristic load on the bracket.</summary>
/// <param name="MeanResistanceN">Mean resistance (N).</param>
/// <param name="ResistanceCov">Its coefficient of variation.</param>
/// <param name="MeanActionN">Mean action (N); 0 when nothing acts.</param>
/// <param name="ActionCov">Its coefficient of variation.</param>
/// <param name="CharacteristicShare">Characteristic over design action of the governing load case.</param>
/// <param name="DownN">Characteristic load downwards on the bracket (N), 0 or more.</param>
/// <param name="OutN">Characteristic pull straight off the wall (N), 0 or more.</param>
/// <param name="TurningNmm">Characteristic moment that pulls the top off the wall (Nmm), 0 or more.</param>
public sealed record BracketOdds(
    double MeanResistanceN, double ResistanceCov, double MeanActionN, double ActionCov, double CharacteristicShare, double DownN, double OutN, double TurningNmm);

/// <summary>One hole to drill.</summary>
/// <param name="Bit">Kind of bit: <c>masonry</c>, <c>wood</c>, <c>metal</c>, <c>core</c>, <c>spear</c>, or <c>none</c>.</param>
/// <param name="DepthMm">From the face; never deeper than the fixing and the wall allow.</param>
/// <param name="SupportProbability">Chance that a thin hole here meets the support.</param>
/// <param name="Strip">Cable strip that the hole lies in, or empty.</param>
public sealed record HoleAnswer(Point At, double DiameterMm, double DepthMm, string Bit, double SupportProbability, string Strip);

/// <summary>Design forces on one fixing, N.</summary>
public sealed record FixingForce(Point At, double TensionN, double ShearN);

/// <summary>A kind that would do as well.</summary>
/// <param name="Sure">Probability of the ideas of the wall in which it fits and holds.</param>
public sealed record AlternativeAnswer(string Fixing, double Utilisation, string Governs, double ProbabilityOfFailure, decimal PriceEach, double Sure);

/// <summary>A kind that will not do, and why.</summary>
public sealed record RejectedAnswer(string Fixing, Reason Why);

/// <summary>The wall as cut at a hole, for the section drawing: layers from the face inwards, and what is behind.</summary>
public sealed record WallSection(string BuildUp, IReadOnlyList<SectionLayer> Layers, string? Fixing, double ScrewLengthMm, double EmbedmentMm);

/// <summary>One layer: <c>board</c>, <c>skim</c>, <c>foam</c>, <c>void</c>, <c>dab</c>, <c>timber</c>, <c>steel</c>, <c>brick</c>, <c>block</c>, <c>aerated_block</c>, <c>concrete</c>, <c>laths</c>, <c>plaster</c>, <c>tile</c>, <c>panel</c>.</summary>
/// <param name="SdMm">Standard deviation of the thickness: how wide the doubt is.</param>
public sealed record SectionLayer(string Material, double ThicknessMm, double SdMm);

/// <summary>What is known of a wall.</summary>
public sealed record WallAnswer(
    string Id, string Name, string Kind, double WidthMm, double HeightMm,
    IReadOnlyList<BuildUpChance> BuildUps, double BoardMm, double BoardSdMm, double VoidMm, double VoidSdMm,
    IReadOnlyList<SupportBand> Supports, IReadOnlyList<PitchChance> Pitches,
    IReadOnlyList<ZoneAnswer> Zones, IReadOnlyList<CableStrip> Strips, CheckToDo? Next, IReadOnlyList<Reason> Notes);

/// <summary>One build-up and its probability; likeliest first.</summary>
public sealed record BuildUpChance(string BuildUp, double Probability);

/// <summary>A support as a band: centre, standard deviation, width and probability that it is there; along x at every height.</summary>
public sealed record SupportBand(double CentreMm, double SdMm, double WidthMm, double Probability);

public sealed record PitchChance(double Mm, double Probability);

/// <summary>A zone of its own build-up, e.g. the lintel over a window.</summary>
public sealed record ZoneAnswer(string Id, string Kind, Rect Area, IReadOnlyList<BuildUpChance> BuildUps);

/// <summary>A strip in which cables are allowed (BS 7671 522.6.202) or a caution band by something plumbed.</summary>
/// <param name="Kind"><c>cable</c> or <c>pipe</c>.</param>
/// <param name="Checked">How it was checked, or empty.</param>
public sealed record CableStrip(string Id, string Kind, Rect Area, string Checked);

/// <summary>A check to do first: what, where, why, what it costs and what it is worth.</summary>
/// <param name="Kind">e.g. <c>probe</c>, <c>magnet</c>, <c>detector</c>, <c>hooked_wire</c>, <c>sample</c>.</param>
/// <param name="Before">Chance of the likeliest state now; <paramref name="After"/> what is expected afterwards.</param>
public sealed record CheckToDo(string Kind, string Wall, Point? At, IReadOnlyList<string> Items, Reason Why, double Minutes, double Before, double After);

/// <summary>A line of the buying list. Sort is <c>fixing</c>, <c>bit</c> or <c>tool</c>.</summary>
public sealed record BuyLine(string Id, string Sort, int Needed, int FromVan, int Packs, int PackSize, decimal PackPrice, decimal Price, IReadOnlyList<string> Items)
{
    /// <summary>Why it is on the list, where the whole job was looked at; null in the greedy list.</summary>
    public Reason? Why { get; init; }
}

/// <summary>A step of the work in order; bits are changed least.</summary>
public sealed record WorkStep(string Bit, double DiameterMm, double StopMm, IReadOnlyList<string> Items, int Holes, Reason What);
