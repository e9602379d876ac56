using Pattress.Jobs.Doors;

namespace Pattress.Jobs.Checks;

/// <summary>Checks that need more than one field of a job. Parts that were refused before are passed over.</summary>
internal static class JobChecks
{
    /// <summary>Runs every check in the document's order.</summary>
    public static void Run(Entry job, ProblemList problems)
    {
        IdChecks.Run(job, problems);
        foreach (var wall in job.ItemsOf("walls")) WallChecks.Run(wall, problems);
        FixtureChecks.Run(job, problems);
        StockChecks.Run(job, problems);
        StockChecks.Prices(job, problems);
        TrialChecks.Run(job, problems);
    }

    /// <summary>The checks of walls that stand outside a job: ids, places, readings.</summary>
    public static void OfWalls(IEnumerable<Entry> walls, ProblemList problems)
    {
        List<Entry> all = [.. walls];
        IdChecks.Run(all, [], problems);
        foreach (var wall in all) WallChecks.Run(wall, problems);
    }
}
