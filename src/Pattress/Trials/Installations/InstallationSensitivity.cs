namespace Pattress.Trials.Installations;

/// <summary>An unknown of an installation.</summary>
public enum Unknown
{
    Load,
    Batch,
    Wall,
    OwnResistance,
    OwnAction,
}

/// <summary>What knowing one thing would do to the chance of failure.</summary>
/// <param name="Of">The unknown.</param>
/// <param name="IfKnown">Chance of failure were it exactly its mean (the likeliest wall for <see cref="Unknown.Wall"/>).</param>
public readonly record struct Influence(Unknown Of, double IfKnown);

/// <summary>Which unknown matters most: each in turn is set to its mean and the chance of failure worked out again.</summary>
public static class InstallationSensitivity
{
    private const double Known = 1e-3;

    /// <summary>The influences, the one that lowers the chance most first. Arguments as for <see cref="InstallationFailure"/>.</summary>
    public static IReadOnlyList<Influence> Of(ReadOnlySpan<double> walls, ReadOnlySpan<BracketOnWall> brackets, SharedCauses shared)
    {
        int count = brackets.Length / walls.Length, likeliest = Likeliest(walls);
        List<Influence> found =
        [
            new(Unknown.Load, InstallationFailure.Probability(walls, brackets, shared with { LoadCov = 0 })),
            new(Unknown.Batch, InstallationFailure.Probability(walls, brackets, shared with { BatchCov = 0 })),
            new(Unknown.Wall, InstallationFailure.Probability(brackets.Slice(likeliest * count, count), shared)),
            new(Unknown.OwnResistance, InstallationFailure.Probability(walls, Each(brackets, b => b with { CovResistance = Math.Min(b.CovResistance, Known) }), shared)),
            new(Unknown.OwnAction, InstallationFailure.Probability(walls, Each(brackets, b => b with { CovAction = 0 }), shared)),
        ];
        return [.. found.OrderBy(i => i.IfKnown).ThenBy(i => i.Of)];
    }

    private static int Likeliest(ReadOnlySpan<double> walls)
    {
        int at = 0;
        for (int i = 1; i < walls.Length; i++) if (walls[i] > walls[at]) at = i;
        return at;
    }

    private static BracketOnWall[] Each(ReadOnlySpan<BracketOnWall> brackets, Func<BracketOnWall, BracketOnWall> change)
    {
        var changed = new BracketOnWall[brackets.Length];
        for (int i = 0; i < changed.Length; i++) changed[i] = change(brackets[i]);
        return changed;
    }
}
