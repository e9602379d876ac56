namespace Pattress.Trials.Installations;

/// <summary>The generator xoshiro256** with its state filled by splitmix64: same seed, same stream, on every machine.</summary>
internal struct Xoshiro
{
    private ulong _a, _b, _c, _d;

    public Xoshiro(ulong seed) => (_a, _b, _c, _d) = (Split(ref seed), Split(ref seed), Split(ref seed), Split(ref seed));

    /// <summary>Uniform on [0, 1) with 53 bits.</summary>
    public double Next()
    {
        ulong result = ulong.RotateLeft(_b * 5, 7) * 9, t = _b << 17;
        _c ^= _a;
        _d ^= _b;
        _b ^= _c;
        _a ^= _d;
        _c ^= t;
        _d = ulong.RotateLeft(_d, 45);
        return (result >> 11) * (1.0 / (1UL << 53));
    }

    internal static ulong Split(ref ulong seed)
    {
        ulong z = seed += 0x9E3779B97F4A7C15;
        z = (z ^ z >> 30) * 0xBF58476D1CE4E5B9;
        z = (z ^ z >> 27) * 0x94D049BB133111EB;
        return z ^ z >> 31;
    }
}
