using Pattress.Planning.Bearers;

namespace Pattress.Jobs.Layouts;

/// <summary>Where the brackets of each thing could go.</summary>
/// <param name="Lines">Heights at which things that hang nearly level would be so.</param>
public sealed record LayoutAnswer(IReadOnlyList<ItemLayouts> Items, IReadOnlyList<LevelLine> Lines);

/// <summary>The layouts of one thing, the one to take first; the other ones say what they give up.</summary>
public sealed record ItemLayouts(string Id, string Name, string Wall, IReadOnlyList<ItemLayout> Layouts);

/// <summary>One layout.</summary>
/// <param name="Kind"><c>as_placed</c>, <c>symmetric</c>, <c>free</c> or <c>one_more</c>; <c>batten</c>, <c>noggin</c> or <c>pattress</c> with timber between.</param>
/// <param name="Meeting">Brackets expected to meet a support.</param>
/// <param name="AllMeet">Chance that all do, inferred jointly; null for more than eight.</param>
/// <param name="OffEvenMm">Furthest from where even spacing would put a bracket.</param>
/// <param name="OffSymmetricMm">Furthest from symmetric.</param>
/// <param name="Verdict">Of the thing so placed.</param>
/// <param name="Why">What it is, and what it gives up.</param>
public sealed record ItemLayout(
    string Kind, IReadOnlyList<Point> Brackets, double Meeting, double? AllMeet, double OffEvenMm, double OffSymmetricMm, Verdict Verdict, Reason Why)
{
    /// <summary>The timber between brackets and wall, where there is one.</summary>
    public BearerPlan? Bearer { get; init; }

    /// <summary>What to enter by hand to have it in the job; null where it is taken over as it is.</summary>
    public Reason? Enter { get; init; }
}
