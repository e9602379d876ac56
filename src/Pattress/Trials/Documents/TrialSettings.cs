using Pattress.Trials.Statistics;

namespace Pattress.Trials.Documents;

/// <summary>What is asked of a series of tests.</summary>
/// <param name="Fractile">Share of the population allowed below the characteristic value, above 0 and at most 0.5.</param>
/// <param name="Confidence">Confidence of the characteristic value, between 0 and 1.</param>
/// <param name="Law">Law of the loads.</param>
public sealed record TrialSettings(double Fractile = 0.05, double Confidence = 0.75, StrengthLaw Law = StrengthLaw.Lognormal)
{
    internal IEnumerable<Problem> Problems()
    {
        if (!(Fractile is > 0 and <= 0.5)) yield return new("out_of_range", "fractile", Text(Fractile), "above 0 and at most 0.5");
        if (!(Confidence is > 0 and < 1)) yield return new("out_of_range", "confidence", Text(Confidence), "between 0 and 1");
    }

    private static string Text(double value) => value.ToString("R", System.Globalization.CultureInfo.InvariantCulture);
}

/// <summary>One test as it was entered.</summary>
/// <param name="Line">Line of the file, from 1.</param>
/// <param name="Kind">Kind of fixing.</param>
/// <param name="LoadN">Load at failure (N); the lower end where only an interval is known.</param>
/// <param name="HighN">Upper end of the interval (N), or null.</param>
/// <param name="Failed">False when the test was stopped before the fixing failed.</param>
/// <param name="Further">The further columns, in the order of the header.</param>
public sealed record TrialTest(int Line, string Kind, double LoadN, double? HighN, bool Failed, IReadOnlyList<string> Further)
{
    /// <summary>The load that means and scatter count with: the middle of an interval.</summary>
    public double CountedN => HighN is { } high ? 0.5 * (LoadN + high) : LoadN;

    /// <summary>What it was tested in.</summary>
    public TestedIn In { get; init; } = TestedIn.NotSaid;

    /// <summary>Of a cantilever test with arm and bracket: the pull on the fixing, of which <see cref="LoadN"/> is the middle.</summary>
    public Claims.ForceOnFixing? Pull { get; init; }
}

/// <summary>How a test loaded its fixing.</summary>
public enum TestedIn
{
    NotSaid,
    Tension,
    Shear,

    /// <summary>A weight on an arm, turned into the pull on the fixing by the bracket model.</summary>
    Cantilever,

    /// <summary>A weight on an arm, arm or bracket not stated: an order of merit, never converted.</summary>
    OrderOfMerit,
}

/// <summary>A file of tests, read.</summary>
/// <param name="FurtherColumns">Names of the columns kept but not used.</param>
/// <param name="Tests">The tests in the file's order, at least one.</param>
public sealed record TrialDocument(IReadOnlyList<string> FurtherColumns, IReadOnlyList<TrialTest> Tests)
{
    /// <summary>The file's notes: its lines that begin with #, without it.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];

    /// <summary>Reads a file: see <see cref="TrialReader"/>.</summary>
    public static Outcome<TrialDocument> Read(string csv) => new TrialReader().Read(csv);
}
