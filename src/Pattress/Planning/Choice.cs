using Pattress.Actions;
using Pattress.Fixings;
using Pattress.Jobs;
using Pattress.Planning.Resisting;

namespace Pattress.Planning;

/// <summary>Judges every size of every kind for one bracket over all ideas of the wall.</summary>
public sealed class Choice
{
    private readonly BracketActions _bracket;
    private readonly IReadOnlyList<Idea> _ideas;
    private readonly Ask _ask;
    private readonly IReadOnlyList<OldHole> _oldHoles;
    private readonly Pattern[] _patterns;
    private readonly Forces _forces;
    private readonly KnownSpots _known;

    /// <summary>Holes in use, where they are on the plate, and the ideas that speak of them.</summary>
    private sealed record Pattern(IReadOnlyList<int> Holes, IReadOnlyList<Point> Points, IReadOnlyList<Idea> Ideas);

    public Choice(BracketActions bracket, IReadOnlyList<Idea> ideas, Ask ask, IReadOnlyList<OldHole> oldHoles) : this(bracket, ideas, ask, oldHoles, null)
    {
    }

    /// <param name="known">What other brackets of the thing have asked already, or null.</param>
    internal Choice(BracketActions bracket, IReadOnlyList<Idea> ideas, Ask ask, IReadOnlyList<OldHole> oldHoles, KnownSpots? known)
    {
        (_bracket, _ideas, _ask, _oldHoles, _known) = (bracket, ideas, ask, oldHoles, known ?? new(ask, bracket.Plate));
        _forces = new(bracket, ask.ToeStrip);
        _patterns = [.. ideas.SelectMany(i => Patterns.Of(bracket.Plate.Holes, i.Columns)).DistinctBy(h => string.Join(' ', h))
            .Select(h => new Pattern(h, [.. h.Select(i => bracket.Plate.Holes[i])], [.. ideas.Where(i => Speaks(i, h))]))];
    }

    /// <summary>One candidate a size, in the catalogue's order: its best pattern of holes.</summary>
    public IReadOnlyList<Candidate> All(FixingCatalogue catalogue) => [.. catalogue.Sizes.Select(Judge)];

    /// <summary>
    /// The one to use: those sure enough first, support and masonry before board, then by cost and id; when none is sure
    /// enough, the surest.
    /// </summary>
    public Candidate? Pick(IReadOnlyList<Candidate> all)
    {
        var holding = all.Where(c => c.Best is not null).ToList();
        var sure = holding.Where(c => Rounded(c.Sure) >= _ask.SureWanted).ToList();
        return sure.Count > 0
            ? sure.OrderBy(c => HouseRules.OnBoard(c.Spot!.Behind)).ThenBy(c => c.Cost(_ask.Settings.MinutePrice)).ThenBy(c => c.Size.Id, StringComparer.Ordinal).First()
            : holding.OrderByDescending(c => Rounded(c.Sure)).ThenBy(c => c.Cost(_ask.Settings.MinutePrice)).ThenBy(c => c.Size.Id, StringComparer.Ordinal).FirstOrDefault();
    }

    internal static double Rounded(double value) => Math.Round(value, 6, MidpointRounding.ToEven);

    private Candidate Judge(FixingSize size)
    {
        Candidate? best = null;
        foreach (var pattern in _patterns)
        {
            var candidate = Judge(size, pattern);
            if (best is null || Better(candidate, best)) best = candidate;
        }
        return best!;
    }

    private static bool Better(Candidate a, Candidate b) =>
        Rounded(a.Sure) > Rounded(b.Sure)
        || (Rounded(a.Sure) == Rounded(b.Sure) && a.Best is null && a.NearestUtilisation < b.NearestUtilisation - 1e-9)
        || (Rounded(a.Sure) == Rounded(b.Sure) && a.Best is not null && a.Holes.Count < b.Holes.Count);

    private Candidate Judge(FixingSize size, Pattern pattern)
    {
        var between = Patterns.Foul(size, pattern.Points) ?? OldHole(size, pattern);
        var holding = new List<Idea>();
        double sure = 0, nearest = double.PositiveInfinity;
        (Idea Idea, Hold Hold)? best = null;
        Idea? nearestIn = null;
        Reason? refused = null;
        double refusedWeight = -1;
        foreach (var idea in pattern.Ideas)
        {
            var (reason, hold) = InIdea(size, pattern, between, idea);
            if (hold is { NotCovered: null } && (nearestIn is null || idea.Probability > nearestIn.Probability)) (nearest, nearestIn) = (hold.Utilisation, idea);
            if (reason is null)
            {
                sure += idea.Probability;
                holding.Add(idea);
                if (best is null || idea.Probability > best.Value.Idea.Probability) best = (idea, hold!);
            }
            else if (Weight(reason, idea) > refusedWeight) (refused, refusedWeight) = (reason, Weight(reason, idea));
        }
        return new(size, pattern.Holes, sure, best?.Idea, best?.Hold, best is null ? refused ?? new Reason("no_idea_of_wall") : null, nearest, nearestIn, holding);
    }

    /// <summary>An idea of meeting a support speaks only of the holes over it; the others speak of any holes.</summary>
    private static bool Speaks(Idea idea, IReadOnlyList<int> holes) => !idea.IntoSupport || holes.All(idea.Columns.Contains);

    /// <summary>A refusal for the wrong base says least: the reason shown is the likeliest idea's that it was meant for.</summary>
    private static double Weight(Reason reason, Idea idea) => reason.Code == "not_for_base" ? idea.Probability * 1e-3 : idea.Probability;

    /// <param name="between">Why its holes foul each other or an old one, or null.</param>
    private (Reason? Reason, Hold? Hold) InIdea(FixingSize size, Pattern pattern, Reason? between, Idea idea)
    {
        var spot = idea.For(size.Kind);
        if ((_known.Refusal(size, spot) ?? between) is { } reason) return (reason, null);
        var forces = _forces.Of(pattern.Holes, size.Kind.HoldsBy, spot);
        if (forces is null) return (new Reason("mechanism_of_plate"), null);
        var hold = Holds.Worst(size, spot, forces, pattern.Points, _bracket.Plate, _ask, null, _known);
        return (Verdict(hold), hold);
    }

    private Reason? OldHole(FixingSize size, Pattern pattern)
    {
        if (_oldHoles.Count == 0) return null;
        foreach (var h in pattern.Points)
            if (Neighbours.OldHole(size, new(_bracket.At.X + h.X, _bracket.At.Y + h.Y), _oldHoles) is { } reason) return reason;
        return null;
    }

    private Reason? Verdict(Hold hold)
    {
        if (hold.NotCovered is not null) return hold.NotCovered;
        if (Rounded(hold.Utilisation) > 1) return new Reason("too_weak", Said.Percent(hold.Utilisation), Said.Name("mechanism." + hold.Governs));
        return hold.ProbabilityOfFailure > _ask.TargetProbability
            ? new Reason("too_likely_to_fail", Said.Plain(hold.ProbabilityOfFailure), Said.Plain(_ask.TargetProbability))
            : null;
    }
}
