using Pattress.Trials.Statistics;

namespace Pattress.Trials.Standards;

/// <summary>EN 14358:2016, timber structures: 5 % fractile at 75 % confidence.</summary>
public static class En14358_2016
{
    private const string Clause = "EN 14358:2016 clause 3";

    /// <summary>k_s = (6.5 n + 6) / (3.7 n - 3), the simplified expression; about 1 % above the exact factor at n = 5. n at least 3.</summary>
    public static Outcome<KFactor> Simplified(int n) => n < 3
        ? KFactor.NotCovered(n, Clause, "3 tests or more")
        : KFactor.Of((6.5 * n + 6) / (3.7 * n - 3), Clause + ", simplified");

    /// <summary>The exact factor by the noncentral t law.</summary>
    public static Outcome<KFactor> Exact(int n) => ByConfidence.Of(n, 0.95, 0.75, Clause + ", noncentral t");
}

/// <summary>Factors at a stated confidence, scatter unknown.</summary>
public static class ByConfidence
{
    /// <summary>5 % fractile at 90 % confidence, as in European assessments of anchors (ETAG 001 Annex A, EAD 330499).</summary>
    public static Outcome<KFactor> Assessment(int n) => Of(n, 0.95, 0.90, "EAD 330499, 5 % fractile at 90 % confidence");

    /// <summary>B-basis: 10 % fractile at 95 % confidence (MIL-HDBK-5, CMH-17).</summary>
    public static Outcome<KFactor> BBasis(int n) => Of(n, 0.90, 0.95, "CMH-17 B-basis");

    /// <summary>A-basis: 1 % fractile at 95 % confidence.</summary>
    public static Outcome<KFactor> ABasis(int n) => Of(n, 0.99, 0.95, "CMH-17 A-basis");

    /// <summary>Any fractile and confidence (ISO 16269-6).</summary>
    public static Outcome<KFactor> Of(int n, double exceeded, double confidence, string clause = "ISO 16269-6, scatter unknown") => n < 2
        ? KFactor.NotCovered(n, clause, "2 tests or more")
        : KFactor.Of(ToleranceFactor.ScatterUnknown(n, exceeded, confidence), clause);
}
