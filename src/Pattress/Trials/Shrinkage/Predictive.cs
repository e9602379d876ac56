using Pattress.Trials.Special;

namespace Pattress.Trials.Shrinkage;

/// <summary>A law known as a mixture of normals, on the scale of the model.</summary>
public sealed class Predictive
{
    private readonly double[] _weights, _means, _deviations;

    internal Predictive(double[] weights, double[] means, double[] deviations)
    {
        (_weights, _means, _deviations) = (weights, means, deviations);
        for (int i = 0; i < weights.Length; i++) Mean += weights[i] * means[i];
        double variance = 0;
        for (int i = 0; i < weights.Length; i++)
            variance += weights[i] * (deviations[i] * deviations[i] + (means[i] - Mean) * (means[i] - Mean));
        StandardDeviation = Math.Sqrt(variance);
    }

    /// <summary>The second law with this share, else the first.</summary>
    internal static Predictive Mixed(Predictive a, Predictive b, double shareOfB) => new(
        [.. a._weights.Select(w => w * (1 - shareOfB)), .. b._weights.Select(w => w * shareOfB)], [.. a._means, .. b._means], [.. a._deviations, .. b._deviations]);

    public double Mean { get; }

    /// <summary>May be very large where one or two kinds leave the spread between kinds to its prior.</summary>
    public double StandardDeviation { get; }

    /// <summary>P(value &lt;= x).</summary>
    public double Cdf(double x)
    {
        double value = 0;
        for (int i = 0; i < _weights.Length; i++) value += _weights[i] * NormalTable.Cdf((x - _means[i]) / _deviations[i]);
        return value;
    }

    /// <summary>The value that is not reached with probability <paramref name="p"/>, between 0 and 1.</summary>
    public double Quantile(double p)
    {
        if (!(p is > 0 and < 1)) throw new ArgumentOutOfRangeException(nameof(p), p, "between 0 and 1");
        double width = Typical(), x = Bracketed(p, width, Sparse);
        for (int i = 0; i < MostSteps; i++)
        {
            var (value, slope) = At(x, 1);
            double next = x - (value - p) / slope;
            if (Math.Abs(next - x) <= 1e-15 * Math.Abs(x) + 1e-300) return next;
            if (!(Math.Abs(next - x) < width)) break;
            x = next;
        }

        return Bracketed(p, width, 1);
    }

    /// <summary>The quantile of every so-manieth part alone is where the search over all of them starts.</summary>
    private const int Sparse = 7, MostSteps = 12;

    private double Bracketed(double p, double width, int every)
    {
        double low = Mean - width, high = Mean + width, all = 0;
        for (int i = 0; i < _weights.Length; i += every) all += _weights[i];
        while (At(low, every).Value > p * all) low -= width *= 2;
        while (At(high, every).Value < p * all) high += width *= 2;
        return Root.Newton(x => At(x, every) is var (value, slope) ? (value - p * all, slope) : default, 0.5 * (low + high), low, high);
    }

    /// <summary>A typical deviation of the components: the mixture's own may not exist.</summary>
    private double Typical()
    {
        double sum = 0;
        for (int i = 0; i < _weights.Length; i++) sum += _weights[i] * Math.Log(_deviations[i]);
        return Math.Exp(sum);
    }

    private (double Value, double Slope) At(double x, int every)
    {
        double value = 0, slope = 0;
        for (int i = 0; i < _weights.Length; i += every)
        {
            double z = (x - _means[i]) / _deviations[i];
            value += _weights[i] * NormalTable.Cdf(z);
            slope += _weights[i] / _deviations[i] * Normal.Pdf(z);
        }
        return (value, slope);
    }
}
