namespace Pattress.Brackets;

/// <summary>Ways in which a plate can leave the wall without stretching a fixing.</summary>
internal static class Mechanism
{
    private const double Slack = 1e-10;

    /// <summary>
    /// True when some movement lifts no point into the wall, stretches no fixing, and is not resisted by the load. Such
    /// movements form a pointed cone; its edges are where two of its bounds hold, so looking at pairs is enough. There are
    /// none when a fixing lies strictly inside the outline's hull.
    /// </summary>
    internal static bool Lifts(in ContactEnergy energy)
    {
        int n = energy.X.Length + energy.Fixings.Length;
        for (int i = 0; i < n; i++)
            for (int j = i + 1; j < n; j++)
            {
                Triple v = Triple.Cross(Bound(energy, i), Bound(energy, j));
                double size = v.Norm;
                if (size < Slack) continue;
                if (Free(energy, v, 1 / size) || Free(energy, v, -1 / size)) return true;
            }
        return false;
    }

    private static Triple Bound(in ContactEnergy energy, int i)
    {
        if (i < energy.X.Length) return new Triple(1, energy.X[i], energy.Y[i]);
        ref readonly var f = ref energy.Fixings[i - energy.X.Length];
        return new Triple(-1, -f.X, -f.Y);
    }

    private static bool Free(in ContactEnergy energy, in Triple v, double scale)
    {
        if (scale * energy.Load.Dot(v) < -Slack) return false;
        for (int i = 0; i < energy.X.Length; i++)
            if (scale * v.At(energy.X[i], energy.Y[i]) < -Slack) return false;
        foreach (ref readonly var f in energy.Fixings)
            if (scale * v.At(f.X, f.Y) > Slack) return false;
        return true;
    }
}
