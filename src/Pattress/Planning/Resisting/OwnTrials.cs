using Pattress.Jobs;
using Pattress.Trials.Statistics;

namespace Pattress.Planning.Resisting;

/// <summary>What the user's tests say of one size in one direction (N), before damp, duration and partial factor.</summary>
/// <param name="Count">Tests to failure or stopped that count: on board no thicker than asked about, or on the masonry of this wall.</param>
/// <param name="CharacteristicN">5 % fractile at 75 % confidence, lognormal; null with fewer than <see cref="OwnTrials.Enough"/>.</param>
/// <param name="MedianN">Median of the tests.</param>
/// <param name="Cov">Scatter of one more fixing: that of the series, widened for its few tests.</param>
/// <param name="LowestFailureN">The lowest load at which one failed, at the bench or on site; null when none failed.</param>
/// <param name="InDamp">Every one of them was tested in damp board.</param>
public sealed record Tested(int Count, double? CharacteristicN, double MedianN, double Cov, double? LowestFailureN, bool InDamp)
{
    /// <summary>What may be relied on: never more than a load at which one failed.</summary>
    public double? RelyOnN => CharacteristicN is { } c ? Math.Min(c, LowestFailureN ?? c) : null;
}

/// <summary>The user's own tests and what came away on site, by size. Tests raise a resistance only where there are enough; failures always lower it.</summary>
public sealed class OwnTrials
{
    /// <summary>Tests in the board or on the wall before its resistance rests on them: BS 8539's practice for other base materials, borrowed.</summary>
    public const int Enough = 5;

    /// <summary>A board counts as no thicker than another within this, mm.</summary>
    private const double BoardSlackMm = 0.6;

    private readonly ILookup<(string, string), OwnTest> _tests;
    private readonly Dictionary<(string, string, string, double), Tested?> _known;
    private readonly string _wall;

    private OwnTrials(ILookup<(string, string), OwnTest> tests, Dictionary<(string, string, string, double), Tested?> known, string wall) => (_tests, _known, _wall) = (tests, known, wall);

    public static OwnTrials None { get; } = new(Enumerable.Empty<OwnTest>().ToLookup(Key), [], "");

    /// <summary>Tests and proofs of a job, those taken back left out. A fixing that came away or moved under its pull counts as a failure there.</summary>
    public static OwnTrials Of(IReadOnlyList<OwnTest> tests, IReadOnlyList<ProofRecord> proofs) =>
        tests.Count + proofs.Count == 0 ? None : new(tests.Where(t => !t.Withdrawn).Concat(proofs.Where(Failed).Select(AsTest)).ToLookup(Key), [], "");

    /// <summary>The same as one wall of the job sees them.</summary>
    public OwnTrials On(string wall) => ReferenceEquals(this, None) ? this : new(_tests, _known, wall);

    private static (string, string) Key(OwnTest t) => (t.Fixing, t.Load);

    private static bool Failed(ProofRecord p) => !p.Withdrawn && p.Result != "held" && p.Fixing.Length > 0;

    private static OwnTest AsTest(ProofRecord p) => new() { Id = p.Id, Fixing = p.Fixing, Load = "tension", LoadN = p.LoadN, Where = "site" };

    /// <summary>What they say of a size in a board; null when they say nothing.</summary>
    /// <param name="load"><c>tension</c> or <c>shear</c>.</param>
    /// <param name="boardMm">Thickness of the board in question.</param>
    public Tested? For(string size, string load, double boardMm) =>
        Known(size, load, "board", boardMm, t => t.BoardMm is { } mm && mm <= boardMm + BoardSlackMm);

    /// <summary>What they say of a size in the masonry of this wall: tests on the wall itself count, a failure in the same material anywhere lowers.</summary>
    /// <param name="material"><c>brick</c>, <c>dense_block</c>, <c>concrete</c>, <c>aerated_block</c> or <c>dab</c>.</param>
    public Tested? ForMasonry(string size, string load, string material) =>
        Known(size, load, material + " " + _wall, 0, t => _wall.Length > 0 && t.Wall == _wall && t.From.Length == 0 && Into(t) == material, material);

    private Tested? Known(string size, string load, string where, double boardMm, Func<OwnTest, bool> counts, string material = "board")
    {
        if (ReferenceEquals(this, None)) return null;
        var key = (size, load, where, boardMm);
        return _known.TryGetValue(key, out var known) ? known : _known[key] = Say([.. _tests[(size, load)].Where(t => Into(t) == material || Into(t) == "unknown")], counts);
    }

    private static string Into(OwnTest t) => t.Into == "unknown" && t.BoardMm is not null ? "board" : t.Into;

    /// <summary>A failure in a thicker board, or in a material nobody named, tells of this one too; a success does not.</summary>
    private static Tested? Say(IReadOnlyList<OwnTest> all, Func<OwnTest, bool> counts)
    {
        if (all.Count == 0) return null;
        OwnTest[] counted = [.. all.Where(counts)];
        double[] loads = [.. counted.Select(t => t.LoadN)];
        double? lowest = all.Where(t => t.Outcome == "failed").Select(t => (double?)t.LoadN).Min();
        if (loads.Length < Enough) return new(loads.Length, null, 0, 0, lowest, false);
        var logs = Characteristic.Logarithms(loads);
        var s = Summary.Of(logs);
        double n = loads.Length, spread = s.StandardDeviation!.Value * Math.Sqrt((1 + 1 / n) * (n - 1) / (n - 3));
        double k = ToleranceFactor.ScatterUnknown(loads.Length, 0.95, 0.75);
        return new(loads.Length, Characteristic.Value(loads, k, StrengthLaw.Lognormal), Math.Exp(s.Mean), Math.Sqrt(Math.Exp(spread * spread) - 1), lowest, counted.All(t => t.Moisture is "damp" or "fresh_plaster"));
    }
}
