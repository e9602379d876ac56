namespace Pattress.Actions.Beams;

/// <summary>Beams on rigid and elastic supports, in O(n): cubic elements and a banded Cholesky factorisation.</summary>
public static class BeamSolver
{
    /// <summary>
    /// Reactions and extremes under standing loads; null when the beam can move freely (too few supports, or too many
    /// hinges). One-sided supports lift off.
    /// </summary>
    public static BeamAnswer? Solve(Beam beam, BeamLoads loads) =>
        beam.Supports.Any(s => s.OneSided) ? OneSidedSupports.Solve(beam, loads) : Solve(beam, loads, null);

    internal static BeamAnswer? Solve(Beam beam, BeamLoads loads, IReadOnlyList<bool>? active)
    {
        if (BeamModel.Of(beam, loads.Places, active) is not { } model) return null;
        var uniform = Uniform(model, loads);
        var forces = Forces(model, loads, uniform);
        var u = model.Solve(forces, s => beam.Supports[s].Settlement);
        return new BeamAnswer(model, u, uniform, Reactions(model, u, forces));
    }

    private static double[] Uniform(BeamModel model, BeamLoads loads)
    {
        var q = new double[model.Mesh.Ei.Length];
        foreach (var load in loads.Uniform)
            for (int i = model.Mesh.Node(load.From); i < model.Mesh.Node(load.To); i++) q[i] += load.PerLength;
        return q;
    }

    private static double[] Forces(BeamModel model, BeamLoads loads, double[] uniform)
    {
        var f = new double[model.Mesh.Unknowns];
        Span<int> place = stackalloc int[4];
        for (int i = 0; i < uniform.Length; i++)
        {
            model.Places(i, place);
            double h = model.Mesh.At[i + 1] - model.Mesh.At[i], l = model.Mesh.Length;
            f[place[0]] += uniform[i] * h / 2;
            f[place[1]] += uniform[i] * h * h / 12 / l;
            f[place[2]] += uniform[i] * h / 2;
            f[place[3]] -= uniform[i] * h * h / 12 / l;
        }
        foreach (var p in loads.Points) f[model.Mesh.Deflection(model.Mesh.Node(p.At))] += p.Force;
        return f;
    }

    internal static double[] Reactions(BeamModel model, double[] u, double[] forces) =>
        [.. model.Beam.Supports.Select((s, i) => !model.Active[i] ? 0
            : s.Rigid ? Rigid(model, u, forces, model.SupportNode(i))
            : s.Stiffness * (u[model.Mesh.Deflection(model.SupportNode(i))] - s.Settlement))];

    /// <summary>What the beam's pieces and the loads leave over at a rigid support.</summary>
    private static double Rigid(BeamModel model, double[] u, double[] forces, int node)
    {
        int at = model.Mesh.Deflection(node);
        double inner = 0;
        for (int piece = Math.Max(0, node - 1); piece < Math.Min(node + 1, model.Mesh.Ei.Length); piece++)
            inner += model.Row(piece, at, u);
        return forces[at] - inner;
    }
}
