namespace Pattress.Walls;

/// <summary>What is believed of one build-up of a wall, and of its depths given that it is this one.</summary>
/// <param name="Board">Board and skim, without insulation and face, mm.</param>
/// <param name="Void">Clear depth behind; (0, 0) where there is none.</param>
/// <param name="BehindAt">Depth from the face at which masonry or a lintel begins; null where there is none.</param>
public sealed record BuildUpBelief(BuildUp BuildUp, double Probability, Spread Board, Spread Void, Spread? BehindAt, double InsulationMm, Spread FaceLayer);

/// <summary>How much a reading moved the answer.</summary>
/// <param name="LogOdds">Natural log odds of the likeliest family with the reading less without it.</param>
/// <param name="Family">That family; <paramref name="Without"/> its probability without the reading, <paramref name="With"/> with it.</param>
public sealed record ReadingInfluence(string Reading, double LogOdds, string Family, double Without, double With);

/// <summary>A contradiction, with the readings concerned.</summary>
public sealed record WallContradiction(Reason What, IReadOnlyList<string> Readings);

/// <summary>What a wall is believed to be; build-ups likeliest first, probabilities summing to 1.</summary>
/// <param name="LogEvidence">Log of P(readings).</param>
/// <param name="FromHouse">Set when other walls of the house moved this one: the likeliest build-up alone, and how far it moved.</param>
public sealed record WallBelief(string WallId, IReadOnlyList<BuildUpBelief> BuildUps, double LogEvidence, IReadOnlyList<WallContradiction> Contradictions, HouseShift? FromHouse = null)
{
    public BuildUpBelief Best => BuildUps[0];

    /// <summary>Probability of a family, e.g. <c>dabs</c>.</summary>
    public double Family(string family) => BuildUps.Where(b => b.BuildUp.Family == family).Sum(b => b.Probability);

    /// <summary>The likeliest family with its probability.</summary>
    public (string Family, double Probability) BestFamily => BuildUps.GroupBy(b => b.BuildUp.Family, StringComparer.Ordinal)
        .Select(g => (g.Key, g.Sum(b => b.Probability))).OrderByDescending(g => g.Item2).ThenBy(g => g.Key, StringComparer.Ordinal).First();

    /// <summary>Probability that the support is of a kind, e.g. <c>timber_stud</c>.</summary>
    public double Support(string support) => BuildUps.Where(b => b.BuildUp.Support == support).Sum(b => b.Probability);
}

/// <summary>How the house's other walls moved this wall's likeliest build-up.</summary>
public sealed record HouseShift(string BuildUp, double Alone, double Together, Reason Why);
