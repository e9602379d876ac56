using Pattress.Actions;
using Pattress.Actions.Beams;

namespace Pattress.Tests.Beams;

/// <summary>Rows of published_c.csv that are no single standing load.</summary>
public class PublishedSpecialTests
{
    private static readonly Beam TwoSpans = new(2, 1, new BeamSupport(0), new(1), new(2));

    [Fact]
    public void Moving_force_on_two_spans()
    {
        var (sag, at) = GreatestSag();
        var hog = InfluenceLine.OfMoment(TwoSpans, 1)!;
        var lines = InfluenceLine.OfReactions(TwoSpans)!;
        foreach (var row in PublishedBeamTests.Of("C-MOV-2"))
            PublishedBeamTests.Check(row, row["quantity"] switch
            {
                "SagMax" => sag,
                "SagMaxAt" => at,
                "HogMax" => -Places().Min(hog.At),
                "HogMaxAt" => Places().Take(10001).MinBy(hog.At),
                "FarUplift" => Places().Min(lines[2].At),
                _ => Places().Max(lines[1].At),
            });
    }

    /// <summary>The same from the moment's envelope under a patch so short that it is a force.</summary>
    [Fact]
    public void Moving_force_on_two_spans_from_the_envelope()
    {
        var m = MomentEnvelope.Of(TwoSpans, BeamLoads.None, new(new(1e-6, 1e6)))!.Value;
        foreach (var row in PublishedBeamTests.Of("C-MOV-2"))
            if (row["quantity"] == "SagMax") PublishedBeamTests.Check(row, m.Max.Value);
            else if (row["quantity"] == "HogMax") PublishedBeamTests.Check(row, -m.Min.Value);
    }

    private static IEnumerable<double> Places() => Enumerable.Range(0, 20001).Select(i => i / 10000.0);

    private static (double, double) GreatestSag()
    {
        double low = 0.3, high = 0.6;
        for (int i = 0; i < 60; i++)
        {
            double a = low + (high - low) * 0.382, b = low + (high - low) * 0.618;
            if (Sag(a) > Sag(b)) high = b;
            else low = a;
        }
        return (Sag(low), low);

        static double Sag(double x) => InfluenceLine.OfMoment(TwoSpans, x)!.At(x);
    }

    [Fact]
    public void Ends_are_level_on_airy_points()
    {
        double a = (1 - 1 / Math.Sqrt(3)) / 2;
        var answer = BeamSolver.Solve(new Beam(1, 1, new BeamSupport(a), new(1 - a)), BeamText.Loads("u:0:1:1"))!;
        double slope = (answer.DeflectionAt(1e-6) - answer.DeflectionAt(0)) / 1e-6;
        Assert.InRange(slope, -1e-9, 1e-9);
        Assert.Equal(0.2113249, a, 0.5e-7);
    }

    /// <summary>Closed form, and the same as 4,001 springs under a long beam to the square of their spacing.</summary>
    [Fact]
    public void Beam_on_foundation()
    {
        var closed = new BeamOnFoundation(200, 50_000);
        double h = 0.002;
        var springs = Enumerable.Range(0, 4001).Select(i => new BeamSupport(i * h, 50_000 * h));
        var meshed = BeamSolver.Solve(new Beam(8, 200, [.. springs]), new BeamLoads([], [new(4, 1000)]))!;
        foreach (var row in PublishedBeamTests.Of("C-BOEF"))
        {
            double value = row["quantity"] switch { "y0" => closed.Deflection(1000, 0), "M0" => closed.Moment(1000, 0), _ => closed.Lambda };
            PublishedBeamTests.Check(row, value);
        }
        Assert.Equal(closed.Deflection(1000, 0), meshed.DeflectionMax.Value, 2e-6);
        Assert.Equal(closed.Moment(1000, 0), meshed.MomentMax.Value, 0.02);
        Assert.Equal(closed.Deflection(1000, 0.5), meshed.DeflectionAt(4.5), 2e-6);
    }

    [Fact]
    public void Shelves_sag_as_the_formula_says_and_as_the_beam_does()
    {
        foreach (var row in PublishedBeamTests.Of("C-SHELF-1").Concat(PublishedBeamTests.Of("C-SHELF-2")).Concat(PublishedBeamTests.Of("C-SHELF-3")))
        {
            var p = row["supports"].Split(':').Skip(1).Select(BeamText.N).ToArray();
            double q = BeamText.N(row["loads"]), ei = p[0] * Statics.BoardInertia(p[1], p[2]);
            PublishedBeamTests.Check(row, Statics.ShelfSag(q, p[3], p[0], p[1], p[2]));
            var beam = new Beam(p[3], ei, new BeamSupport(0), new(p[3]));
            PublishedBeamTests.Check(row, BeamSolver.Solve(beam, new BeamLoads([new(0, p[3], q)], []))!.DeflectionMax.Value);
        }
    }
}
