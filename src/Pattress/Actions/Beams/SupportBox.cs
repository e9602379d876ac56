namespace Pattress.Actions.Beams;

/// <summary>The box of stiffnesses: what was found at the corners looked at, and where.</summary>
internal sealed class SupportBox(Beam beam, IReadOnlyList<SupportStiffness> ranges, int[] open, BeamLoads standing, MovingLoads? moving)
{
    // How many neighbours on either side of a support are tried one by one, and how many of the nearest in every pattern; farther ones hardly reach it.
    private const int Reach = 8, Sweeps = 6, Window = 7;

    private readonly bool[][] _maxAt = new bool[beam.Supports.Count][], _minAt = new bool[beam.Supports.Count][];

    internal double[] Max { get; } = [.. Enumerable.Repeat(double.NegativeInfinity, beam.Supports.Count)];

    internal double[] Min { get; } = [.. Enumerable.Repeat(double.PositiveInfinity, beam.Supports.Count)];

    /// <summary>Looks at one corner (true: stiff); false when the beam can move freely.</summary>
    internal bool Look(bool[] stiff)
    {
        var at = WithStiffness(stiff);
        var reactions = moving is null
            ? BeamSolver.Solve(at, standing)?.Reactions.Select(r => new ReactionRange(new(r, 0), new(r, 0))).ToList()
            : BeamEnvelope.Of(at, standing, moving)?.Reactions;
        if (reactions is null) return false;
        for (int i = 0; i < Max.Length; i++)
        {
            if (reactions[i].Max.Value > Max[i]) (Max[i], _maxAt[i]) = (reactions[i].Max.Value, stiff);
            if (reactions[i].Min.Value < Min[i]) (Min[i], _minAt[i]) = (reactions[i].Min.Value, stiff);
        }
        return true;
    }

    /// <summary>Every pattern of the ranges nearest to each support, the rest soft or stiff; false when the beam can move freely.</summary>
    internal bool Windows()
    {
        for (int goal = 0; goal < Max.Length; goal++)
        {
            int[] near = [.. Enumerable.Range(0, open.Length).OrderBy(k => Math.Abs(open[k] - goal)).Take(Window)];
            for (int pattern = 0; pattern < 2 << near.Length; pattern++)
            {
                bool[] stiff = [.. Enumerable.Repeat(pattern >> near.Length == 1, open.Length)];
                for (int j = 0; j < near.Length; j++) stiff[near[j]] = (pattern >> j & 1) == 1;
                if (!Look(stiff)) return false;
            }
        }
        return true;
    }

    /// <summary>From the best corner of each reaction, one neighbour at a time, until none helps.</summary>
    internal bool Climb()
    {
        for (int goal = 0; goal < Max.Length; goal++)
            for (int sweep = 0; sweep < Sweeps; sweep++)
            {
                double most = Max[goal], least = Min[goal];
                for (int k = 0; k < open.Length; k++)
                    if (Math.Abs(open[k] - goal) <= Reach && !(Look(Turned(_maxAt[goal], k)) && Look(Turned(_minAt[goal], k)))) return false;
                if (Max[goal] == most && Min[goal] == least) break;
            }
        return true;
    }

    private static bool[] Turned(bool[] stiff, int k)
    {
        bool[] other = [.. stiff];
        other[k] = !other[k];
        return other;
    }

    private Beam WithStiffness(bool[] stiff)
    {
        var supports = beam.Supports.ToArray();
        for (int k = 0; k < open.Length; k++)
            supports[open[k]] = supports[open[k]] with { Stiffness = stiff[k] ? ranges[open[k]].High : ranges[open[k]].Low };
        return beam with { Supports = supports };
    }
}
