namespace Pattress.Actions.Beams;

/// <summary>
/// Beams in cups: a support may push but not hold down. Supports that pull are let go and those the beam sinks into are taken
/// back until neither happens; the energy is convex, so the state that fits is the only one. When the quick exchange has not
/// settled after a few rounds, every state is tried in order, which must end.
/// </summary>
internal static class OneSidedSupports
{
    private const int QuickRounds = 40;
    private const int TriedMax = 14;
    private const double Slack = 1e-9;

    internal static BeamAnswer? Solve(Beam beam, BeamLoads loads)
    {
        var active = beam.Supports.Select(_ => true).ToArray();
        for (int round = 0; round < QuickRounds; round++)
        {
            if (BeamSolver.Solve(beam, loads, [.. active]) is not { } answer) break;
            if (!Exchange(beam, answer, active, onlyFirst: round > QuickRounds / 2)) return answer;
        }
        return Exhaustive(beam, loads);
    }

    /// <summary>Corrects the supports that are in the wrong state; false when there are none.</summary>
    private static bool Exchange(Beam beam, BeamAnswer answer, bool[] active, bool onlyFirst)
    {
        bool any = false;
        for (int i = 0; i < active.Length && !(any && onlyFirst); i++)
            if (Wrong(beam, answer, active[i], i))
                (active[i], any) = (!active[i], true);
        return any;
    }

    private static bool Wrong(Beam beam, BeamAnswer answer, bool active, int i)
    {
        if (!beam.Supports[i].OneSided) return false;
        if (active) return answer.Reactions[i] < -Slack * answer.Reactions.Max(Math.Abs);
        double sink = answer.DeflectionAt(beam.Supports[i].At) - beam.Supports[i].Settlement;
        return sink > Slack * Math.Max(answer.DeflectionMax.Value, -answer.DeflectionMin.Value);
    }

    private static BeamAnswer? Exhaustive(Beam beam, BeamLoads loads)
    {
        int n = beam.Supports.Count;
        var cups = Enumerable.Range(0, n).Where(i => beam.Supports[i].OneSided).ToArray();
        if (cups.Length > TriedMax) return null;
        for (int state = 0; state < 1 << cups.Length; state++)
        {
            var active = beam.Supports.Select(_ => true).ToArray();
            for (int k = 0; k < cups.Length; k++) active[cups[k]] = (state >> k & 1) == 0;
            if (BeamSolver.Solve(beam, loads, active) is { } answer && !Exchange(beam, answer, active, onlyFirst: true)) return answer;
        }
        return null;
    }
}
