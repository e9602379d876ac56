using Pattress.Fixings;

namespace Pattress.Planning;

/// <summary>One size with one pattern of holes, judged over all ideas of the wall.</summary>
/// <param name="Sure">Probability of the ideas in which it fits and holds.</param>
/// <param name="Best">The likeliest idea in which it fits and holds, and how it holds there; null when there is none.</param>
/// <param name="HoldsIn">The ideas in which it fits and holds.</param>
/// <param name="Refused">Why not, in the likeliest idea that it could be meant for.</param>
/// <param name="NearestUtilisation">What of it would be used in <paramref name="NearestIn"/>.</param>
/// <param name="NearestIn">The likeliest idea in which its strength was asked, whether it holds there or not; null where it never was.</param>
public sealed record Candidate(FixingSize Size, IReadOnlyList<int> Holes, double Sure, Idea? Best, Hold? Hold, Reason? Refused, double NearestUtilisation,
    Idea? NearestIn, IReadOnlyList<Idea> HoldsIn)
{
    /// <summary>The spot that it is used in, in its best idea.</summary>
    public Spot? Spot => Best?.For(Size.Kind);

    /// <summary>The idea in which it is shown: where it holds best, else where it comes nearest.</summary>
    public Idea? ShownIn => Best ?? NearestIn;

    /// <summary>Material and time for the bracket, in the job's currency.</summary>
    public decimal Cost(decimal minutePrice) => Holes.Count * (Size.Price + (decimal)Size.Minutes * minutePrice);
}

/// <summary>How a size holds in one idea under the worst load case.</summary>
/// <param name="Utilisation">Design action over design resistance of the worst fixing, or of the toe if that is worse.</param>
/// <param name="Governs">Mechanism code.</param>
/// <param name="Basis"><c>rule</c>, <c>trial</c>, <c>mechanics</c> or <c>assumed</c>.</param>
/// <param name="MeanResistanceN">Mean resistance of the worst fixing in the direction of its load.</param>
/// <param name="MeanActionN">Mean load in the same direction.</param>
/// <param name="Marks">Departures from the rules and notes.</param>
public sealed record Hold(
    double Utilisation, string Governs, string Basis, string LoadCase, IReadOnlyList<Jobs.FixingForce> Forces, double ToeMpa, double ToeUtilisation,
    double MeanResistanceN, double ResistanceCov, double MeanActionN, double ActionCov, double ProbabilityOfFailure, double MeanToPermitted,
    Reason? NotCovered, IReadOnlyList<Reason> Marks);
