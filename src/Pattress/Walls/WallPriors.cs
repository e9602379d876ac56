namespace Pattress.Walls;

/// <summary>Priors of build-ups given what is known of house and wall.</summary>
public static class WallPriors
{
    private static readonly Lazy<Dictionary<(string Context, string Value, string Family), double>> Factors = new(() =>
        CsvTable.FromEmbedded("data/walls/priors.csv").Rows.ToDictionary(r => (r["context"], r["value"], r["family"]), r => r.Number("factor")));

    /// <summary>The word of a year built, as the table has it; empty when unknown.</summary>
    public static string Age(int? year) => year switch
    {
        null => "", < 1920 => "before_1920", < 1945 => "1920_1944", < 1970 => "1945_1969", < 1990 => "1970_1989", _ => "from_1990",
    };

    /// <summary>Prior of each row, summing to 1.</summary>
    public static double[] Of(IReadOnlyList<BuildUp> rows, WallEvidence e)
    {
        double[] prior = [.. rows.Select(b => b.Prior * Factor("year", Age(e.YearBuilt), b.Family)
            * Factor("other_side", e.OtherSide, b.Family) * Factor("house", e.House, b.Family))];
        double sum = prior.Sum();
        return [.. prior.Select(p => p / sum)];
    }

    private static double Factor(string context, string value, string family) => Factors.Value.GetValueOrDefault((context, value, family), 1);
}
