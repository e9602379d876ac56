using System.Diagnostics;
using System.Reflection;
using Pattress.Brackets;

namespace Pattress.Tests.Brackets;

public class MillionBracketsTests
{
    /// <summary>
    /// 10^6 cases; 10^5 in an unoptimised build outside CI, so that a run by hand stays short; PATTRESS_BRACKETS=10000000
    /// asks for more.
    /// </summary>
    private static readonly int Cases =
        int.TryParse(Environment.GetEnvironmentVariable("PATTRESS_BRACKETS"), out int n) ? n
        : Optimised || Environment.GetEnvironmentVariable("CI") == "true" ? 1_000_000 : 100_000;

    private static bool Optimised =>
        typeof(ContactSolver).Assembly.GetCustomAttribute<DebuggableAttribute>() is not { IsJITOptimizerDisabled: true };

    [Fact]
    public void No_random_bracket_fails()
    {
        int failed = 0, first = -1, evaluations = 0;
        double worst = 0;
        object gate = new();
        Parallel.For(0, Cases / 1000, block =>
        {
            var (f, at, w, e) = Block(block);
            lock (gate)
            {
                failed += f;
                if (at >= 0) first = at;
                worst = Math.Max(worst, w);
                evaluations = Math.Max(evaluations, e);
            }
        });
        TestContext.Current.SendDiagnosticMessage($"worst residual {worst:e2}, most evaluations {evaluations}");
        Assert.True(failed == 0, $"{failed} of {Cases} failed, e.g. in block {first}; worst residual {worst:e3}, most evaluations {evaluations}");
    }

    private static (int Failed, int At, double Worst, int Evaluations) Block(int block)
    {
        var bracket = new RandomBracket(block);
        int failed = 0, at = -1, evaluations = 0;
        double worst = 0;
        for (int i = 0; i < 1000; i++)
        {
            if (i % 50 == 0) bracket.NextPlate();
            bracket.NextCase();
            var a = bracket.Solve();
            if (a.Status != ContactStatus.Balanced || !(a.Residual <= 1e-10)) (failed, at) = (failed + 1, block);
            worst = Math.Max(worst, a.Residual);
            evaluations = Math.Max(evaluations, a.Evaluations);
        }
        return (failed, at, worst, evaluations);
    }
}
