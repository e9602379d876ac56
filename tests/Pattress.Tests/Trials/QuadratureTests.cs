using Pattress.Trials.Reliability;
using Pattress.Trials.Special;
using Pattress.Trials.Statistics;

namespace Pattress.Tests.Trials;

/// <summary>Against brute-force integration by scipy, run with the tests: the ends of the ranges, pairs of normals, and whole limit states.</summary>
public sealed class QuadratureTests
{
    /// <summary>n 2 to 100, share 0.5 to 0.999, confidence 0.6 to 0.99.</summary>
    [Fact]
    public void Tolerance_factors_hold_at_the_ends_of_their_ranges()
    {
        var values = ScipyReferences.Of("tolerance_end");
        Assert.Equal(96, values.Count);
        foreach (var v in values)
        {
            double k = ToleranceFactor.ScatterUnknown((int)v.Arguments[0], v.Arguments[1], v.Arguments[2]);
            Assert.True(Math.Abs(k - v.Expected) < 1e-9 * (1 + v.Expected), $"k({string.Join(", ", v.Arguments)}) = {k:R}, scipy {v.Expected:R}");
        }
    }

    [Fact]
    public void Two_normals_at_once()
    {
        foreach (var v in ScipyReferences.Of("bivariate"))
        {
            double p = BivariateNormal.Cdf(v.Arguments[0], v.Arguments[1], v.Arguments[2]);
            Assert.True(Math.Abs(p - v.Expected) < 1e-9 * v.Expected + 1e-18, $"({string.Join(", ", v.Arguments)}) = {p:R}, scipy {v.Expected:R}");
        }
    }

    /// <summary>One and the same direction, and opposite ones: min and max of the margins, exact.</summary>
    [Theory]
    [InlineData(-3, -3.0001)]
    [InlineData(-1, 2)]
    [InlineData(1.5, -0.5)]
    public void Two_normals_that_are_one(double h, double k)
    {
        Assert.Equal(Normal.Cdf(Math.Min(h, k)), BivariateNormal.Cdf(h, k, 1));
        Assert.Equal(Math.Max(0, Normal.Cdf(h) - Normal.Cdf(-k)), BivariateNormal.Cdf(h, k, -1));
    }

    /// <summary>A parabola b + bend t²/2 in any direction: FORM finds b, the surface followed gives the integral, Breitung his formula, sampling lies within four standard errors.</summary>
    [Fact]
    public void A_parabola_in_standard_normal_space()
    {
        foreach (var v in ScipyReferences.Of("parabola"))
        {
            double b = v.Arguments[0], c = Math.Cos(v.Arguments[1]), s = Math.Sin(v.Arguments[1]), bend = v.Arguments[2];
            var state = new LimitState([Variable.Normal("x", 0, 1), Variable.Normal("y", 0, 1)], x => b - (c * x[0] + s * x[1]) + bend / 2 * Math.Pow(c * x[1] - s * x[0], 2));
            var answer = ReliabilityOf.LimitState(state).Value!;
            string at = $"b {b:R}, bend {bend:R}";
            Assert.True(Math.Abs(answer.Points[0].Beta - b) < 1e-4, $"{at}: beta {answer.Points[0].Beta:R}");
            Assert.True(Math.Abs(answer.Shape.Followed / v.Expected - 1) < 1e-3, $"{at}: followed {answer.Shape.Followed:R}, exact {v.Expected:R}");
            Assert.True(Math.Abs(answer.Shape.Curvatures[0] - bend) < 1e-3, $"{at}: curvature {answer.Shape.Curvatures[0]:R}");
            Assert.Equal(Normal.UpperTail(b) / Math.Sqrt(1 + b * bend), answer.Shape.Breitung!.Value, 1e-3 * Normal.UpperTail(b));
            Assert.True(Math.Abs(answer.Sampled.Probability - v.Expected) < 4 * answer.Sampled.StandardError, $"{at}: sampled {answer.Sampled.Probability:R} ± {answer.Sampled.StandardError:R}, exact {v.Expected:R}");
        }
    }

    /// <summary>A lognormal resistance under a Gumbel load, of which no closed form is known.</summary>
    [Fact]
    public void Strength_and_load()
    {
        foreach (var v in ScipyReferences.Of("strength_and_load"))
        {
            double m = v.Arguments[0];
            var state = new LimitState([Variable.Lognormal("R", m, m * v.Arguments[1]), Variable.Gumbel("S", 1, v.Arguments[2])], x => x[0] - x[1]);
            var answer = ReliabilityOf.LimitState(state).Value!;
            string at = string.Join(", ", v.Arguments);
            Assert.True(Math.Abs(answer.Shape.Followed / v.Expected - 1) < 2e-3, $"{at}: followed {answer.Shape.Followed:R}, exact {v.Expected:R}");
            Assert.True(Math.Abs(answer.Sampled.Probability - v.Expected) < 4 * answer.Sampled.StandardError, $"{at}: sampled {answer.Sampled.Probability:R} ± {answer.Sampled.StandardError:R}, exact {v.Expected:R}");
        }
    }

    /// <summary>Many years of a very safe thing, and one direction found twice, have answers.</summary>
    [Fact]
    public void Series_at_their_ends()
    {
        // 50 x Phi(-8) = 50 x 6.220961e-16 = 3.1104805e-14, whose index is 7.5033448 (scipy norm.isf).
        Assert.Equal(7.503344849934745, SeriesSystem.Repeated(8, 50), 1e-9);
        Assert.Equal(double.PositiveInfinity, SeriesSystem.Repeated(40, 50));
        double[] alpha = [0.6, 0.8 * (1 + 2e-16)];
        var point = new DesignPoint(3, [1.8, 2.4], [1.8, 2.4], alpha);
        Assert.Equal(Normal.UpperTail(3), SeriesSystem.TwoMembers(point, point), 1e-15);
        var (lower, upper) = SeriesSystem.Bounds([point, point]);
        Assert.Equal((Normal.UpperTail(3), Normal.UpperTail(3)), (lower, upper));
    }
}
