using MathNet.Numerics.LinearAlgebra;
using Pattress.Actions.Beams;

namespace Pattress.Tests.Beams;

/// <summary>The banded solver against MathNet's dense one, and the cubics' roots against the roots they were made of.</summary>
public class BandedSystemTests
{
    [Fact]
    public void Banded_systems_agree_with_a_dense_solver()
    {
        var random = new Random(5);
        int solved = 0;
        for (int n = 0; n < 200; n++)
        {
            int size = random.Next(1, 41);
            var (banded, dense) = (new BandedSystem(size), Matrix<double>.Build.Dense(size, size));
            for (int i = 0; i < size; i++)
            {
                double row = Math.Pow(10, random.Next(-6, 7));
                for (int j = Math.Max(0, i - 5); j <= Math.Min(size - 1, i + 5); j++)
                {
                    // A diagonal that is often nothing wants an exchange of rows.
                    double v = random.Next(3) == 0 || (i == j && n % 2 == 0 && size > 1) ? 0 : row * (random.NextDouble() - 0.5);
                    dense[i, j] = v;
                    banded.Set(i, j, v);
                }
            }
            var x = Vector<double>.Build.Dense(size, _ => random.NextDouble() - 0.5);
            double[] b = [.. dense * x];
            // Rows evened out, what is left says how well the system is told apart.
            var even = Matrix<double>.Build.DenseOfRows(dense.EnumerateRows().Select(r => r.AbsoluteMaximum() is var m && m > 0 ? r / m : r));
            double condition = even.ConditionNumber();
            if (!(condition < 1e8)) continue;
            solved++;
            Assert.Equal(size, banded.Size);
            Assert.True(banded.Factor());
            banded.Solve(b);
            for (int i = 0; i < size; i++) Assert.Equal(x[i], b[i], 1e-14 * condition + 1e-13);
        }
        Assert.True(solved > 100, $"{solved}");
    }

    /// <summary>The second row is twice the first; or nothing: no pivot is left.</summary>
    [Fact]
    public void A_system_without_a_solution_is_refused()
    {
        var twice = new BandedSystem(3);
        double[,] rows = { { 1, 2, 3 }, { 2, 4, 6 }, { 0, 1, 5 } };
        for (int i = 0; i < 9; i++) twice.Set(i / 3, i % 3, rows[i / 3, i % 3]);
        Assert.False(twice.Factor());
        var none = new BandedSystem(2);
        none.Set(0, 0, 1);
        Assert.False(none.Factor());
    }

    [Fact]
    public void Roots_are_those_a_cubic_was_made_of()
    {
        var random = new Random(9);
        Span<double> found = stackalloc double[3];
        for (int n = 0; n < 2000; n++)
        {
            double[] r = [.. Enumerable.Range(0, 3).Select(_ => 4 * random.NextDouble() - 1).Order()];
            double lead = (random.NextDouble() + 0.1) * (n % 2 == 0 ? 1 : -1), length = 1 + random.NextDouble();
            if (r[1] - r[0] < 0.01 || r[2] - r[1] < 0.01 || r.Any(x => Math.Abs(x) < 0.01 || Math.Abs(x - length) < 0.01)) continue;
            // Every third has only two roots, every fifth one: the leading terms are nothing.
            double[] made = n % 5 == 0 ? [r[0]] : n % 3 == 0 ? [r[0], r[1]] : r;
            double[] c = [lead, 0, 0, 0];
            foreach (double x in made)
                for (int i = 3; i >= 0; i--) c[i] = (i > 0 ? c[i - 1] : 0) - x * c[i];
            double[] expected = [.. made.Where(x => x > 0 && x < length)];
            Assert.Equal(expected.Length, new Cubic(c[0], c[1], c[2], c[3]).Roots(length, found));
            for (int i = 0; i < expected.Length; i++) Assert.Equal(expected[i], found[i], 1e-9);
        }
        var (one, two) = (new Cubic(1, 2, 3, 4), new Cubic(7, -5, 0.5, 2));
        // By hand: 1 - 7, 2 + 5, 3 - 0.5, 4 - 2; and 1 + 2·7, 2 - 10, 3 + 1, 4 + 4.
        Assert.Equal(new Cubic(-6, 7, 2.5, 2), one.Less(two));
        Assert.Equal(new Cubic(15, -8, 4, 8), one.Plus(2, two));
        Assert.Equal(new Cubic(2, 6, 12, 0), one.Derivative);
    }

    /// <summary>A cut at every place where something is or changes, once each; the ends always.</summary>
    [Fact]
    public void A_beam_is_cut_where_something_changes()
    {
        var beam = new Beam([new(400, 5), new(600, 7)], [new BeamSupport(200), new(800)], [500]);
        var mesh = new BeamMesh(beam, [300, 200 + 1e-8, 1000 - 1e-8, 700]);
        Assert.Equal([0, 200, 300, 400, 500, 700, 800, 1000], mesh.At);
        Assert.Equal([5, 5, 5, 7, 7, 7, 7], mesh.Ei);
        Assert.Equal((8, 7, 100), (mesh.Nodes, mesh.Pieces, mesh.PieceLength(1)));
        Assert.Equal([4], Enumerable.Range(0, 8).Where(i => mesh.Hinged[i]));
        Assert.Equal((0, 1, 1, 7, 7), (mesh.Node(0), mesh.Node(200), mesh.Node(200 + 1e-8), mesh.Node(1000), mesh.Node(1000 + 1e-8)));
        Assert.Equal((2, 1, 0), (mesh.Node(300 - 1e-8), mesh.Node(200 - 1e-8), mesh.Node(-1e-8)));
        Assert.Equal((0, 0, 1, 1, 6, 6), (mesh.Piece(0), mesh.Piece(199), mesh.Piece(200), mesh.Piece(250), mesh.Piece(1000), mesh.Piece(999)));
    }
}
