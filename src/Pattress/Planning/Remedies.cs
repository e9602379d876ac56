using Pattress.Actions;
using Pattress.Fixings;
using Pattress.Jobs;

namespace Pattress.Planning;

/// <summary>What would do where nothing holds: another place, a support, a noggin or pattress board, a batten, more brackets.</summary>
public static class Remedies
{
    private const int Most = 5;

    public static IReadOnlyList<Reason> For(BracketPlan b, WallView wall, Ask ask)
    {
        var said = new List<Reason>();
        bool onBoard = b.Ideas.Any(i => HouseRules.OnBoard(i.First.Behind));
        double here = b.Ideas.Where(i => i.IntoSupport).Sum(i => i.Probability);
        foreach (var (x, p) in wall.BetterPlaces(b.Actions.At.X).Where(place => place.Probability > here + 0.05).Take(1))
            said.Add(new Reason("remedy_move", Said.Length(Math.Abs(x - b.Actions.At.X)), Said.Length(x), Said.Percent(p)));
        if (ask.Ceiling) said.Add(new Reason("remedy_joist"));
        else if (onBoard) said.AddRange([new Reason("remedy_batten"), new Reason("remedy_noggin")]);
        if (b.Answer.ToeUtilisation > 1 && !ask.ToeStrip) said.Add(new Reason("remedy_strip"));
        if (ask.Class != ConsequenceClass.HoldsPerson && !ask.Ceiling) said.AddRange([new Reason("remedy_more_brackets"), new Reason("remedy_arm")]);
        if (said.Count == 0) said.Add(new Reason("remedy_other_wall"));
        return [.. said.Take(Most)];
    }
}
