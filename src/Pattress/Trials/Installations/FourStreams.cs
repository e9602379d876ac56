using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Pattress.Trials.Installations;

/// <summary>Four streams of <see cref="Xoshiro"/>'s generator side by side, each seeded on its own: eight words of 32 bits a step.</summary>
internal struct FourStreams
{
    private Vector256<ulong> _a, _b, _c, _d;

    public FourStreams(ulong seed)
    {
        Span<ulong> words = stackalloc ulong[16];
        for (int i = 0; i < words.Length; i++) words[i] = Xoshiro.Split(ref seed);
        (_a, _b, _c, _d) = (Vector256.Create<ulong>(words), Vector256.Create<ulong>(words[4..]), Vector256.Create<ulong>(words[8..]), Vector256.Create<ulong>(words[12..]));
    }

    /// <summary>Fills whole steps of eight words; the length must be a multiple of eight.</summary>
    public void Fill(Span<uint> words)
    {
        var steps = MemoryMarshal.Cast<uint, Vector256<ulong>>(words);
        var (a, b, c, d) = (_a, _b, _c, _d);
        for (int i = 0; i < steps.Length; i++)
        {
            // b * 5, turned by 7, * 9; a product of vectors of 64 bits would be slower.
            var five = b + Vector256.ShiftLeft(b, 2);
            var turned = Vector256.ShiftLeft(five, 7) | Vector256.ShiftRightLogical(five, 57);
            steps[i] = turned + Vector256.ShiftLeft(turned, 3);
            var t = Vector256.ShiftLeft(b, 17);
            c ^= a;
            d ^= b;
            b ^= c;
            a ^= d;
            c ^= t;
            d = Vector256.ShiftLeft(d, 45) | Vector256.ShiftRightLogical(d, 19);
        }
        (_a, _b, _c, _d) = (a, b, c, d);
    }
}
