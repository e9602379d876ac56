using Pattress.Jobs;
using Pattress.Trials.Statistics;

namespace Pattress.Planning.Resisting;

/// <summary>What the user's tests say of one size in one direction (N), before damp, duration and partial factor.</summary>
/// <param name="Count">Tests to failure or stopped that count, on board no thicker than asked about.</param>
/// <param name="CharacteristicN">5 % fractile at 75 % confidence, lognormal; null with fewer than <see cref="OwnTrials.Enough"/>.</param>
/// <param name="MedianN">Median of the tests.</param>
/// <param name="Cov">Scatter of one more fixing: that of the series, widened for its few tests.</param>
/// <param name="LowestFailureN">The lowest load at which one failed, at the bench or on site; null when none failed.</param>
/// <param name="InDamp">Every one of them was tested in damp board.</param>
public sealed record Tested(int Count, double? CharacteristicN, double MedianN, double Cov, double? LowestFailureN, bool InDamp);

/// <summary>The user's own tests and what came away on site, by size. Tests raise a resistance only where there are enough; failures always lower it.</summary>
public sealed class OwnTrials
{
    /// <summary>Tests in the board before its resistance rests on them: BS 8539's practice for other base materials, borrowed.</summary>
    public const int Enough = 5;

    /// <summary>A board counts as no thicker than another within this, mm.</summary>
    private const double BoardSlackMm = 0.6;

    private readonly ILookup<(string, string), OwnTest> _tests;
    private readonly Dictionary<(string, string, double), Tested?> _known = [];

    private OwnTrials(IEnumerable<OwnTest> tests) => _tests = tests.ToLookup(t => (t.Fixing, t.Load));

    public static OwnTrials None { get; } = new([]);

    /// <summary>Tests and proofs of a job, those taken back left out. A fixing that came away or moved under its pull counts as a failure there.</summary>
    public static OwnTrials Of(IReadOnlyList<OwnTest> tests, IReadOnlyList<ProofRecord> proofs) =>
        tests.Count + proofs.Count == 0 ? None : new([.. tests.Where(t => !t.Withdrawn), .. proofs.Where(Failed).Select(AsTest)]);

    private static bool Failed(ProofRecord p) => !p.Withdrawn && p.Result != "held" && p.Fixing.Length > 0;

    private static OwnTest AsTest(ProofRecord p) => new() { Id = p.Id, Fixing = p.Fixing, Load = "tension", LoadN = p.LoadN, Where = "site" };

    /// <summary>What they say of a size in a board; null when they say nothing.</summary>
    /// <param name="load"><c>tension</c> or <c>shear</c>.</param>
    /// <param name="boardMm">Thickness of the board in question.</param>
    public Tested? For(string size, string load, double boardMm)
    {
        if (ReferenceEquals(this, None)) return null;
        var key = (size, load, boardMm);
        return _known.TryGetValue(key, out var known) ? known : _known[key] = Say([.. _tests[(size, load)]], boardMm);
    }

    /// <summary>A failure in a thicker board tells of a thinner one too; a success does not, and one in an unknown board tells nothing.</summary>
    private static Tested? Say(IReadOnlyList<OwnTest> all, double boardMm)
    {
        if (all.Count == 0) return null;
        OwnTest[] counted = [.. all.Where(t => t.BoardMm is { } mm && mm <= boardMm + BoardSlackMm)];
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
