using System.Runtime.Intrinsics;
using Pattress.Trials.Special;

namespace Pattress.Trials.Installations;

/// <summary>
/// Draws installations. Each bracket's uniform number shows its first 32 bits first: where they lie above what the bracket
/// could fail with at an unusually high load (2.2 standard deviations; one draw in seventy lies above), it stands whatever the load, and neither the load nor the other
/// bits are drawn. Eight brackets are held against their bounds at once.
/// </summary>
internal sealed class SystemSampler
{
    private const double Usual = 2.2, Word = 1.0 / (1UL << 32);
    private const int Block = 128, Lanes = 8;
    private static readonly uint Tail = (uint)(Normal.Cdf(-Usual) / Word) + 1;

    private readonly Slope[] _slopes;
    private readonly uint[] _bounds, _wallEnds, _words, _loads, _walls = new uint[Block];
    private readonly SharedDraw _draw;
    private readonly int _brackets, _width;
    private FourStreams _streams;
    private Xoshiro _more;

    public SystemSampler(ReadOnlySpan<double> walls, ReadOnlySpan<BracketOnWall> brackets, SharedDraw draw, ulong seed)
    {
        _draw = draw;
        _brackets = brackets.Length / walls.Length;
        _width = (_brackets + Lanes - 1) / Lanes * Lanes;
        (_slopes, _bounds, _wallEnds) = (new Slope[brackets.Length], new uint[_width * walls.Length], new uint[walls.Length]);
        (_words, _loads) = (new uint[Block * _width], new uint[Block]);
        for (int i = 0; i < brackets.Length; i++)
        {
            _slopes[i] = Slope.Of(brackets[i], 1e6);
            _bounds[i / _brackets * _width + i % _brackets] = First32(_slopes[i].Given(Math.Exp(draw.LogAt(Usual)), draw.LogAt(Usual)));
        }
        double end = 0;
        for (int w = 0; w < walls.Length; w++) _wallEnds[w] = First32(end += walls[w]);
        (_streams, _more) = (new FourStreams(seed), new Xoshiro(~seed));
    }

    private static uint First32(double p) => (uint)Math.Min(p / Word, uint.MaxValue);

    /// <summary>How many of the systems fail.</summary>
    public long Failures(long systems)
    {
        long failed = 0;
        for (long done = 0; done < systems; done += Block)
        {
            _streams.Fill(_words);
            _streams.Fill(_loads);
            if (_wallEnds.Length > 1) _streams.Fill(_walls);
            int count = (int)Math.Min(Block, systems - done);
            for (int i = 0; i < count; i++) if (Fails(i)) failed++;
        }
        return failed;
    }

    private bool Fails(int system)
    {
        int wall = 0;
        while (wall < _wallEnds.Length - 1 && _walls[system] >= _wallEnds[wall]) wall++;
        var words = _words.AsSpan(system * _width, _width);
        bool unusual = _loads[system] > uint.MaxValue - Tail;
        return (unusual || May(words, _bounds.AsSpan(wall * _width, _width))) && Failing(words, wall, _loads[system], unusual);
    }

    private static bool May(ReadOnlySpan<uint> words, ReadOnlySpan<uint> bounds)
    {
        for (int i = 0; i < words.Length; i += Lanes)
            if (Vector256.LessThanOrEqualAny(Vector256.Create(words[i..]), Vector256.Create(bounds[i..]))) return true;
        return false;
    }

    private bool Failing(ReadOnlySpan<uint> words, int wall, uint load, bool unusual)
    {
        double z = Normal.Quantile(Math.Max(double.Epsilon, (load + _more.Next()) * Word)), logQ = _draw.LogAt(z), q = _draw.Value(logQ);
        for (int b = 0; b < _brackets; b++)
        {
            if (!unusual && words[b] > _bounds[wall * _width + b]) continue;
            if ((words[b] + _more.Next()) * Word < _slopes[wall * _brackets + b].Given(q, logQ)) return true;
        }
        return false;
    }
}
