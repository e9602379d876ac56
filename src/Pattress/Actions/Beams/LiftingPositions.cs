namespace Pattress.Actions.Beams;

/// <summary>Positions of moving patches to be tried where supports lift off.</summary>
internal static class LiftingPositions
{
    internal static IEnumerable<UniformLoad[]> Of(IReadOnlyList<InfluenceLine> lines, MovingLoads moving, int steps)
    {
        double length = lines[0].Length, b = moving.First.Length;
        if (moving.Second is { } second) return Pairs(length, moving.First, second, (int)Math.Sqrt(steps));
        var starts = lines.SelectMany(l => MovingPatch.Turns(l, 0, length - b, [(0, -1), (b, 1)]))
            .Concat(Enumerable.Range(0, steps + 1).Select(i => (length - b) * i / steps));
        return starts.Select(a => new[] { At(moving.First, a) });
    }

    private static IEnumerable<UniformLoad[]> Pairs(double length, PatchLoad first, PatchLoad second, int steps)
    {
        double slack = length - first.Length - second.Length;
        for (int i = 0; i <= steps; i++)
            for (int j = i; j <= steps; j++)
            {
                double left = slack * i / steps, right = slack * j / steps;
                yield return [At(first, left), At(second, right + first.Length)];
                yield return [At(first, right + second.Length), At(second, left)];
            }
    }

    private static UniformLoad At(PatchLoad patch, double start) => new(start, start + patch.Length, patch.PerLength);
}
