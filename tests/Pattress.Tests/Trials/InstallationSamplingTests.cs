using Pattress.Trials.Installations;
using Pattress.Trials.Special;

namespace Pattress.Tests.Trials;

/// <summary>The quadrature against plain simulation, written here from the definition and sharing no code with the library.</summary>
public sealed class InstallationSamplingTests
{
    private const int Installations = 200, Systems = 3_000;

    /// <summary>
    /// 200 random installations; the squared z-scores sum to a chi-square. Refused at 0.1 %: one joint test, so that neither
    /// a single unlucky case nor a small error everywhere goes the wrong way.
    /// </summary>
    [Fact]
    public void Quadrature_agrees_with_simulation()
    {
        var random = new Random(5);
        double sum = 0;
        for (int i = 0; i < Installations; i++)
        {
            var (walls, brackets, shared, p) = Draw(random);
            double share = Simulate(walls, brackets, shared, random), error = Math.Sqrt(p * (1 - p) / Systems);
            sum += (share - p) / error * ((share - p) / error);
        }
        double chance = GammaFunctions.ChiSquareUpperTail(sum, Installations);
        Assert.True(chance > 0.001 && chance < 0.9999, $"sum of squares {sum} over {Installations}: chance {chance}");
    }

    /// <summary>An installation whose chance is large enough for the normal law of its share (at least 40 failures expected).</summary>
    private static (double[] Walls, BracketOnWall[] Brackets, SharedCauses Shared, double P) Draw(Random random)
    {
        while (true)
        {
            double first = 0.2 + 0.6 * random.NextDouble();
            double[] walls = random.Next(2) == 0 ? [1] : [first, 1 - first];
            var shared = new SharedCauses(random.Next(2) == 0 ? LoadLaw.Lognormal : LoadLaw.Gumbel, 0.1 + 0.4 * random.NextDouble(), random.Next(2) * 0.3 * random.NextDouble());
            int count = random.Next(1, 9);
            BracketOnWall[] brackets = [.. Enumerable.Range(0, count * walls.Length).Select(_ => Bracket(random))];
            double p = InstallationFailure.Probability(walls, brackets, shared);
            if (p is > 0.014 and < 0.9) return (walls, brackets, shared, p);
        }
    }

    private static BracketOnWall Bracket(Random random)
    {
        bool normal = random.Next(4) == 0;
        return new(200 + 500 * random.NextDouble(), 0.08 + 0.22 * random.NextDouble(), 30 + 120 * random.NextDouble(),
            normal ? 0 : 0.2 * random.NextDouble(), normal ? ResistanceLaw.Normal : ResistanceLaw.Lognormal);
    }

    private static double Simulate(double[] walls, BracketOnWall[] brackets, SharedCauses shared, Random random)
    {
        int count = brackets.Length / walls.Length, failed = 0;
        for (int i = 0; i < Systems; i++)
        {
            int wall = random.NextDouble() < walls[0] ? 0 : walls.Length - 1;
            double load = Load(shared, random), batch = Lognormal(1, shared.BatchCov, random);
            bool fails = false;
            for (int b = 0; b < count; b++) fails |= Resistance(brackets[wall * count + b], random) * batch < Action(brackets[wall * count + b], random) * load;
            if (fails) failed++;
        }
        return failed / (double)Systems;
    }

    private static double Resistance(BracketOnWall b, Random random) => b.Law == ResistanceLaw.Normal
        ? b.MeanResistance * (1 + b.CovResistance * Bell(random)) : Lognormal(b.MeanResistance, b.CovResistance, random);

    private static double Action(BracketOnWall b, Random random) => Lognormal(b.MeanAction, b.CovAction, random);

    private static double Load(SharedCauses shared, Random random)
    {
        if (shared.LoadLaw == LoadLaw.Lognormal) return Lognormal(1, shared.LoadCov, random);
        double scale = shared.LoadCov * Math.Sqrt(6) / Math.PI;
        return 1 - 0.5772156649015329 * scale - scale * Math.Log(-Math.Log(1 - random.NextDouble()));
    }

    private static double Lognormal(double mean, double cov, Random random)
    {
        double variance = Math.Log(1 + cov * cov);
        return mean * Math.Exp(Math.Sqrt(variance) * Bell(random) - variance / 2);
    }

    /// <summary>Box and Muller.</summary>
    private static double Bell(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());

    /// <summary>
    /// A curtain rail on six equal brackets under one load that varies by 40 %: independent brackets would give 1 - (1 - p)^6.
    /// By quadrature, by simulation and by scipy the shared load makes failures come together, and the chance is lower by far.
    /// </summary>
    [Fact]
    public void Shared_causes_matter()
    {
        BracketOnWall[] brackets = [.. Enumerable.Repeat(new BracketOnWall(400, 0.2, 150), 6)];
        var shared = new SharedCauses(LoadLaw.Lognormal, 0.4, 0.1);
        double together = InstallationFailure.Probability(brackets, shared);
        double one = InstallationFailure.Probability(brackets.AsSpan(0, 1), shared), apart = 1 - Math.Pow(1 - one, 6);
        Assert.True(apart > 1.2 * together, $"{apart} against {together}");
        var scipy = Assert.Single(ScipyReferences.Of("worked_installation"));
        Assert.Equal(scipy.Expected, together, 1e-10);
        var (share, error) = InstallationSampling.Estimate([1.0], brackets, shared, 400_000, 3);
        Assert.True(Math.Abs(share - together) < 4 * error, $"{share} against {together}");
    }

    [Theory]
    [InlineData(LoadLaw.Lognormal, 0.15)]
    [InlineData(LoadLaw.Gumbel, 0)]
    public void Fast_sampling_agrees_too(LoadLaw law, double batch)
    {
        double[] walls = [0.7, 0.3];
        BracketOnWall[] brackets = [new(300, 0.2, 100), new(350, 0.15, 120, 0, ResistanceLaw.Normal), new(200, 0.3, 100, 0.1), new(250, 0.25, 120)];
        var shared = new SharedCauses(law, 0.3, batch);
        var (share, error) = InstallationSampling.Estimate(walls, brackets, shared, 400_000, 11);
        Assert.True(Math.Abs(share - InstallationFailure.Probability(walls, brackets, shared)) < 4 * error);
    }
}
