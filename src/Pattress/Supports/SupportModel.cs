namespace Pattress.Supports;

/// <summary>Where the supports of one wall or ceiling are, from everything seen along its lines: all zones are inferred jointly.</summary>
public static class SupportModel
{
    /// <summary>Buffers only; every answer depends on its arguments alone.</summary>
    [ThreadStatic]
    private static LineReader? _reader;

    private static LineReader Reader => _reader ??= new();

    /// <summary>Grid of the answer, mm.</summary>
    public const double StepMm = 1;

    /// <summary>
    /// Infers the supports. The scan must be sound (<see cref="LineScanCheck"/> tells); readings off the wall are left out.
    /// </summary>
    public static SupportBelief Infer(LineScan scan, LineRates? rates = null, LinePriors? priors = null) =>
        Reader.Infer(scan, rates ?? scan.Rates ?? LineRates.Default, priors ?? LinePriors.Default);

    /// <summary>
    /// Chance that thin holes at all these places (at most 8) meet a support: exact over the average of models, which is not
    /// the product of the single chances.
    /// </summary>
    public static double AllHit(LineScan scan, IReadOnlyList<double> atMm, LineRates? rates = null, LinePriors? priors = null) =>
        Reader.AllHit(scan, atMm, rates ?? scan.Rates ?? LineRates.Default, priors ?? LinePriors.Default);

    /// <summary>Which readings moved the answer, and by how much, greatest first.</summary>
    public static IReadOnlyList<LineInfluence> Explain(LineScan scan, LineRates? rates = null, LinePriors? priors = null) =>
        LineExplain.Of(scan, rates ?? scan.Rates ?? LineRates.Default, priors ?? LinePriors.Default);

    /// <summary>What each reading moved where it was taken, greatest first; one inference a reading.</summary>
    /// <param name="only">Readings to explain; null: all.</param>
    public static IReadOnlyList<LineInfluence> ExplainNear(LineScan scan, LineRates? rates = null, LinePriors? priors = null, IReadOnlyCollection<string>? only = null) =>
        LineExplain.Near(scan, rates ?? scan.Rates ?? LineRates.Default, priors ?? LinePriors.Default, only);
}
