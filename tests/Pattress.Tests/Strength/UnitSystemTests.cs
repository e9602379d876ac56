using System.Globalization;
using Pattress.Quantities;
using Pattress.Strength;

namespace Pattress.Tests.Strength;

/// <summary>Every rule gives the same in inches and pounds as in millimetres and newtons, to 1e-12.</summary>
public class UnitSystemTests
{
    public static TheoryData<string> Ids => [.. RuleBook.All.Where(r => r.Parameters.Any(p => Other(p.Dimension) != null)).Select(r => r.Id)];

    // One of the other system's units in the rule's own: international yard and pound (1959), standard gravity.
    private static (string Unit, double Factor)? Other(Dimension dimension) => dimension switch
    {
        Dimension.LengthMm => ("in", 25.4),
        Dimension.AreaMm2 => ("in2", 25.4 * 25.4),
        Dimension.ForceN => ("lbf", 4.4482216152605),
        Dimension.MomentNmm => ("lbf in", 4.4482216152605 * 25.4),
        Dimension.StressMpa => ("psi", 4.4482216152605 / (25.4 * 25.4)),
        Dimension.DensityKgPerM3 => ("pcf", 0.45359237 / (304.8 * 304.8 * 304.8) * 1e9),
        Dimension.AngleDeg => ("rad", 180 / Math.PI),
        _ => null,
    };

    [Theory]
    [MemberData(nameof(Ids))]
    public void Both_systems_agree(string id)
    {
        var rule = RuleBook.Find(id)!;
        int compared = 0;
        foreach (double[] x in Samples.Of(rule, 200).Where(x => rule.Evaluate(x).Covered).Take(20))
        {
            var answer = RuleBook.Evaluate(id, rule.Parameters.Select((p, i) => (p, i)).ToDictionary(p => p.p.Symbol, p => Text(p.p, x[p.i])));
            Assert.True(answer.Ok, string.Join("; ", answer.Problems));
            if (!answer.Value!.Result.Covered) continue;
            double expected = rule.Evaluate(x).Value;
            // A step of a table at the very value may tip: such a value changes by far more than rounding, and never for two samples in a row.
            Assert.Equal(expected, answer.Value.Result.Value, 1e-12 * Math.Max(Math.Abs(expected), 1e-300) * Conditioning(rule, x));
            compared++;
        }
        Assert.True(compared >= 5, $"only {compared} compared");
    }

    /// <summary>How much a relative change of an input is magnified (at least 1): rounding of the inputs is no fault of the rule.</summary>
    private static double Conditioning(Rule rule, double[] x)
    {
        double worst = 1;
        for (int i = 0; i < x.Length; i++)
        {
            double[] y = [.. x];
            y[i] = x[i] * (1 + 1e-7);
            if (Other(rule.Parameters[i].Dimension) is null || rule.Evaluate(y) is not { Covered: true } moved || rule.Evaluate(x).Value is var v && v == 0) continue;
            worst = Math.Max(worst, Math.Abs(moved.Value / rule.Evaluate(x).Value - 1) / 1e-7);
        }
        return worst;
    }

    private static string Text(Parameter p, double value) => p.Words.Count > 0 ? p.Words[(int)value]
        : Other(p.Dimension) is { } other ? Plain(value / other.Factor) + " " + other.Unit : Plain(value);

    // Without an exponent, to the last digit.
    private static string Plain(double value) => ((decimal)Math.Abs(value) is var m && Math.Abs((double)m - Math.Abs(value)) <= 1e-15 * Math.Abs(value))
        ? (value < 0 ? "-" : "") + m.ToString(CultureInfo.InvariantCulture) : value.ToString("F25", CultureInfo.InvariantCulture);
}
