namespace Pattress.Trials.Reliability;

/// <summary>A limit state: fails where <see cref="Margin"/> is below 0.</summary>
/// <param name="Variables">The independent basic variables, at least one.</param>
/// <param name="Margin">g(x), continuous, in any unit.</param>
public sealed record LimitState(IReadOnlyList<Variable> Variables, Func<double[], double> Margin)
{
    public int Dimension => Variables.Count;

    /// <summary>g at a point of standard normal space.</summary>
    internal double At(ReadOnlySpan<double> u)
    {
        var x = new double[u.Length];
        for (int i = 0; i < x.Length; i++) x[i] = Variables[i].At(u[i]);
        return Margin(x);
    }

    /// <summary>Central differences with a step of 1e-5 standard deviations.</summary>
    internal double[] Gradient(double[] u)
    {
        const double step = 1e-5;
        var gradient = new double[u.Length];
        double[] moved = [.. u];
        for (int i = 0; i < u.Length; i++)
        {
            moved[i] = u[i] + step;
            double above = At(moved);
            moved[i] = u[i] - step;
            gradient[i] = (above - At(moved)) / (2 * step);
            moved[i] = u[i];
        }
        return gradient;
    }

    /// <summary>The basic variables' values at a point of standard normal space.</summary>
    internal double[] Values(double[] u) => [.. u.Select((v, i) => Variables[i].At(v))];
}
