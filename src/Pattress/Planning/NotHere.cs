using Pattress.Actions;
using Pattress.Fixings;

namespace Pattress.Planning;

/// <summary>Why nothing holds at a bracket, in one reason.</summary>
internal static class NotHere
{
    private const double Mostly = 0.5;

    /// <summary>The rule of the house that stands against board where board is likeliest; else what came nearest, and where; else that nothing fits.</summary>
    public static Reason Because(IReadOnlyList<Idea> ideas, IReadOnlyList<Candidate> all, Candidate? nearest, Hold? hold, Ask ask) =>
        OnBoard(ideas, ask) ?? (nearest is null ? Nothing(ideas, all) : Weak(nearest, hold!));

    private static Reason? OnBoard(IReadOnlyList<Idea> ideas, Ask ask)
    {
        if (ideas.Where(i => HouseRules.OnBoard(i.First.Behind)).Sum(i => i.Probability) <= Mostly) return null;
        if (ask.Class == ConsequenceClass.HoldsPerson) return new Reason("not_here_person");
        if (ask.Ceiling) return new Reason("not_here_overhead");
        return ask.Class == ConsequenceClass.Overhead ? new Reason("not_here_above_people") : null;
    }

    private static Reason Weak(Candidate nearest, Hold hold) => new("not_here_weak", Said.Name(nearest.Size.Id), Said.Percent(nearest.NearestUtilisation),
        Said.Name(nearest.NearestIn!.First.BuildUp), Said.Name("mechanism." + hold.Governs));

    /// <summary>Where no strength was ever asked: what speaks against the most kinds.</summary>
    private static Reason Nothing(IReadOnlyList<Idea> ideas, IReadOnlyList<Candidate> all)
    {
        var main = ideas.MaxBy(i => i.Probability)!;
        var most = all.Where(c => c.Refused is { Code: not "not_for_base" }).GroupBy(c => c.Refused!.Code, StringComparer.Ordinal)
            .OrderByDescending(g => g.Count()).ThenBy(g => g.Key, StringComparer.Ordinal).FirstOrDefault();
        return most is null ? new Reason("not_here_none", Said.Name(main.First.BuildUp)) : most.First().Refused!;
    }
}
