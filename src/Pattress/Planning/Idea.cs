using Pattress.Fixings;

namespace Pattress.Planning;

/// <summary>
/// One idea of what stands behind the holes of a bracket, with its probability. The ideas of a bracket exclude each other;
/// what is missing to one is a hole that splits the edge of a support.
/// </summary>
/// <param name="Spots">What is met, the nearest to the face first.</param>
/// <param name="IntoSupport">The holes of <paramref name="Columns"/> meet a stud, joist or header well inside its edges.</param>
/// <param name="Columns">Indices of the bracket's holes that the idea speaks of; all of them unless <paramref name="IntoSupport"/>.</param>
/// <param name="SupportProbability">Per hole, chance that a thin hole meets a support.</param>
public sealed record Idea(IReadOnlyList<Spot> Spots, double Probability, bool IntoSupport, IReadOnlyList<int> Columns, IReadOnlyList<double> SupportProbability)
{
    /// <summary>The spot as this kind uses it: a gap before masonry serves a board fixing and, deeper, a sleeve.</summary>
    public Spot For(FixingKind kind)
    {
        foreach (var spot in Spots) if (kind.Into.Contains(spot.Behind)) return spot;
        return Spots[0];
    }

    /// <summary>What is met first.</summary>
    public Spot First => Spots[0];
}

/// <summary>What the choice must know besides loads and wall.</summary>
/// <param name="SureWanted">How sure the wall must be for <c>ready</c>.</param>
/// <param name="TargetProbability">Greatest chance of failure over the life.</param>
public sealed record Ask(
    Actions.ConsequenceClass Class, bool Removable, bool ToeStrip, bool Ceiling, Jobs.Settings Settings, string Moisture,
    double SureWanted, double TargetProbability)
{
    /// <summary>The user's own tests.</summary>
    public Resisting.OwnTrials Trials { get; init; } = Resisting.OwnTrials.None;
}
