namespace Pattress.Supports;

/// <summary>Where the supports of one wall or ceiling are, from everything seen along its lines: all zones are inferred jointly.</summary>
public static class SupportModel
{
    /// <summary>Grid of the answer, mm.</summary>
    public const double StepMm = 1;

    /// <summary>
    /// Infers the supports. The scan must be sound (<see cref="LineScanCheck"/> tells); readings off the wall are left out.
    /// </summary>
    public static SupportBelief Infer(LineScan scan, LineRates? rates = null, LinePriors? priors = null) =>
        new LineReader().Infer(scan, rates ?? LineRates.Default, priors ?? LinePriors.Default);

    /// <summary>
    /// Chance that thin holes at all these places (at most 8) meet a support: exact over the average of models, which is not
    /// the product of the single chances.
    /// </summary>
    public static double AllHit(LineScan scan, IReadOnlyList<double> atMm, LineRates? rates = null, LinePriors? priors = null) =>
        new LineReader().AllHit(scan, atMm, rates ?? LineRates.Default, priors ?? LinePriors.Default);
}
