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
            * Factor("other_side", e.OtherSide, b.Family) * Factor("house", e.House, b.Family)
            * Factor("standards", e.Standards, Board(b)))];
        double sum = prior.Sum();
        return [.. prior.Select(p => p / sum)];
    }

    /// <summary>Boards are sold by the inch in one country and by the millimetre in the others.</summary>
    private static string Board(BuildUp b) => b.Id.Contains(".us_", StringComparison.Ordinal) ? "inch_board"
        : b.Family is "timber_studs" or "steel_studs" or "board_ceiling" ? "metric_board" : b.Family;

    private static double Factor(string context, string value, string family) => Factors.Value.GetValueOrDefault((context, value, family), 1);
}
