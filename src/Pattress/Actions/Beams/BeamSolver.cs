namespace Pattress.Actions.Beams;

/// <summary>Beams on rigid and elastic supports, in O(n): the exact transfer from node to node as one banded system.</summary>
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
        var action = Action(model, loads);
        return new BeamAnswer(model, model.Solve(action), action);
    }

    private static BeamAction Action(BeamModel model, BeamLoads loads)
    {
        var action = model.NoAction();
        foreach (var load in loads.Uniform)
            for (int i = model.Mesh.Node(load.From); i < model.Mesh.Node(load.To); i++) action.Uniform[i] += load.PerLength;
        foreach (var p in loads.Points) action.Force[model.Mesh.Node(p.At)] += p.Force;
        for (int s = 0; s < action.Settlement.Length; s++) action.Settlement[s] = model.Beam.Supports[s].Settlement;
        return action;
    }
}
