namespace Pattress.Supports;

/// <summary>
/// A scan with holes, and the slopes of its log evidence where they were asked for. It keeps what is costly to make ready, so
/// that a change of one wall asks the others anew only away from the assumed rates. Not for several threads at once.
/// </summary>
internal sealed class TeachingScan(LineScan scan, LineRates assumed, LinePriors priors)
{
    private readonly LineReader _reader = new();
    private RateSlopes? _first;
    private (RatePoint At, RateSlopes Slopes)? _last;

    public LineScan Scan => scan;

    /// <summary>Slopes at these rates. How they bend is looked at once, at the assumed ones.</summary>
    public RateSlopes At(RatePoint at)
    {
        var prior = RatePoint.Of(assumed);
        var first = _first ??= RateSlopes.Both(_reader, scan, assumed, priors, prior);
        if (at == prior) return first;
        if (_last is not { } last || last.At != at) _last = last = (at, RateSlopes.Up(_reader, scan, assumed, priors, at, first.Bend));
        return last.Slopes;
    }
}
