namespace Pattress.Walls;

/// <summary>The zone over one opening: kind of lintel, its height and bearing, together with the wall's build-up.</summary>
internal sealed class LintelZone
{
    private readonly WallOpening _opening;
    private readonly IReadOnlyList<BuildUp> _wallRows;
    private readonly List<Case> _cases = [];
    private readonly double[][] _kinds;
    private readonly double[] _none;
    private readonly WallPosterior _asWall;

    /// <summary>One geometry: the lintel's rows from readings within it, the wall's rows from the rest.</summary>
    private sealed record Case(double Height, double Bearing, double Share, WallPosterior Lintel, WallPosterior Rest, double Scale);

    public LintelZone(WallOpening opening, List<WallReading> readings, WallEvidence e, IReadOnlyList<BuildUp> wallRows, WallRates rates)
    {
        (_opening, _wallRows) = (opening, wallRows);
        var bare = e with { WholeThicknessMm = null, Openings = [], Parts = [], WallId = opening.Id };
        var known = new Dictionary<string, (WallPosterior, WallPosterior)>(StringComparer.Ordinal);
        _asWall = new(bare with { Readings = readings }, rates);
        foreach (var (height, bearing, share) in ZoneModel.Geometries()) Add(height, bearing, share, readings, bare, known, rates);
        _kinds = [.. wallRows.Select(b => Kinds(b.Family))];
        _none = [.. wallRows.Select(b => ZoneModel.None(b.Family))];
        OfWall = [.. wallRows.Select((_, b) => Total(b))];
    }

    /// <summary>P(readings here | row of the wall), up to a factor.</summary>
    public double[] OfWall { get; }

    /// <summary>The zone's belief, given the joint of the wall's rows from everything else.</summary>
    public ZoneOfWall Belief(double[] wallJoint)
    {
        var lintel = _cases[0].Lintel;
        double[] kind = new double[lintel.Rows.Count];
        double asWall = 0, total = 0, bestCase = 0;
        var best = _cases[0];
        double[] height = new double[3], bearing = new double[3];
        foreach (var c in _cases)
        {
            double[] k = Joint(c, wallJoint);
            double sum = k.Sum();
            for (int i = 0; i < k.Length; i++) kind[i] += k[i];
            Moments(height, c.Height, sum);
            Moments(bearing, c.Bearing, sum);
            if (sum > bestCase) (best, bestCase) = (c, sum);
            total += sum;
        }
        for (int b = 0; b < _wallRows.Count; b++) asWall += wallJoint[b] * _none[b] * Scaled(_asWall, b);
        double[] posterior = total > 0 ? [.. kind.Select(k => k / total)] : [.. lintel.Prior];
        return new(_opening.Id, "lintel", _opening.XMm, _opening.YMm + _opening.HeightMm, _opening.WidthMm, Spread(height), Spread(bearing),
            asWall / (asWall + total), best.Lintel.Of(posterior, Math.Log(asWall + total)));
    }

    private void Add(double height, double bearing, double share, List<WallReading> readings, WallEvidence bare, Dictionary<string, (WallPosterior, WallPosterior)> known, WallRates rates)
    {
        var inside = readings.Where(r => Within(r, height, bearing)).ToList();
        string key = string.Join('\n', inside.Select(r => r.Id));
        if (!known.TryGetValue(key, out var pair))
            known[key] = pair = (new(bare with { Kind = "lintel", Readings = inside }, rates), inside.Count == 0 ? _asWall : new(bare with { Readings = [.. readings.Except(inside)] }, rates));
        _cases.Add(new(height, bearing, share, pair.Item1, pair.Item2, Math.Exp(pair.Item1.LogScale + pair.Item2.LogScale - _asWall.LogScale)));
    }

    private bool Within(WallReading r, double height, double bearing) =>
        r.YMm <= _opening.YMm + _opening.HeightMm + height && r.XMm >= _opening.XMm - bearing && r.XMm <= _opening.XMm + _opening.WidthMm + bearing;

    private double[] Kinds(string family)
    {
        var rows = _cases[0].Lintel;
        double[] share = [.. rows.Rows.Select((k, i) => rows.Prior[i] * ZoneModel.KindShare(k, family))];
        double sum = share.Sum();
        return [.. share.Select(s => s * (1 - ZoneModel.None(family)) / sum)];
    }

    private static double Scaled(WallPosterior w, int b) => w.Likelihood[b];

    private double Total(int b)
    {
        double sum = _none[b] * Scaled(_asWall, b);
        foreach (var c in _cases)
            for (int k = 0; k < _kinds[b].Length; k++) sum += c.Share * c.Scale * _kinds[b][k] * c.Lintel.Likelihood[k] * c.Rest.Likelihood[b];
        return sum;
    }

    /// <summary>Joint of the lintel's kinds under one geometry.</summary>
    private double[] Joint(Case c, double[] wallJoint)
    {
        double[] k = new double[c.Lintel.Rows.Count];
        for (int b = 0; b < _wallRows.Count; b++)
        {
            double w = wallJoint[b] * c.Share * c.Scale * c.Rest.Likelihood[b];
            for (int i = 0; i < k.Length; i++) k[i] += w * _kinds[b][i] * c.Lintel.Likelihood[i];
        }
        return k;
    }

    private static void Moments(double[] m, double value, double weight) => (m[0], m[1], m[2]) = (m[0] + weight, m[1] + (weight * value), m[2] + (weight * value * value));

    private static Spread Spread(double[] m) => m[0] <= 0 ? default : new(m[1] / m[0], Math.Sqrt(Math.Max(0, (m[2] / m[0]) - (m[1] / m[0] * (m[1] / m[0])))));
}
