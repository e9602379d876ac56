using System.Text.Json;
using Pattress.Jobs.Doors;
using Pattress.Jobs.Text;
using Pattress.Trials.Claims;
using Pattress.Trials.Documents;
using Pattress.Trials.Special;

namespace Pattress.Jobs.Certain;

/// <summary>The documents of <c>pattress compare</c>: claims (JSON) or tests (CSV) in, each pair side by side out.</summary>
public static class CompareDocument
{
    private const double OneSided = 0.95;

    /// <summary>The answer as JSON, or the problems of the input. What begins with a brace is claims, else tests.</summary>
    public static Outcome<string> Answer(string text) => text.AsSpan().TrimStart("\uFEFF \t\r\n").StartsWith("{") ? OfClaims(text) : OfTests(text);

    private static Outcome<string> OfClaims(string json)
    {
        var read = Door.Read(json, CompareShapes.Document);
        if (read.Value is not { } entry) return Outcome<string>.Refused(read.Problems);
        var problems = new ProblemList();
        var claims = ClaimsRead.Of(entry, problems);
        return problems.IsEmpty ? Outcome<string>.Of(Write(claims)) : Outcome<string>.Refused(problems.Problems);
    }

    private static string Write(IReadOnlyList<ClaimAsRead> claims) => JsonOut.Text(json =>
    {
        json.WriteStartObject();
        json.WriteObjects("claims", claims, WriteClaim);
        json.WriteObjects("pairs", [.. Pairs(claims)], WritePair);
        json.WriteObjects("assumptions", [new Reason("claims_basis_assumed")], WriteReason);
        json.WriteEndObject();
    });

    private static IEnumerable<(ClaimAsRead A, ClaimAsRead B)> Pairs(IReadOnlyList<ClaimAsRead> claims)
    {
        for (int a = 0; a < claims.Count; a++)
            for (int b = a + 1; b < claims.Count; b++) yield return (claims[a], claims[b]);
    }

    private static void WriteClaim(Utf8JsonWriter json, ClaimAsRead read)
    {
        json.WriteString("kind", read.Claim.Kind);
        json.WriteNumber("claimed_n", read.Claim.LoadN);
        if (read.Common is { } common)
        {
            json.WriteNumber("mean_n", common.MedianN);
            json.WriteNumber("low_n", common.MedianN * Math.Exp(-Normal.NinetyFive * common.LogSd));
            json.WriteNumber("high_n", common.MedianN * Math.Exp(Normal.NinetyFive * common.LogSd));
        }
        json.WriteObjects("reasons", read.Reasons, WriteReason);
    }

    private static void WritePair(Utf8JsonWriter json, (ClaimAsRead A, ClaimAsRead B) pair)
    {
        var why = ClaimReading.WhyNotComparable(pair.A.Claim, pair.B.Claim);
        json.WriteString("kind", pair.A.Claim.Kind);
        json.WriteString("other", pair.B.Claim.Kind);
        json.WriteBoolean("comparable", why.Count == 0);
        if (ClaimsCompared.Chance(pair.A, pair.B) is { } chance) WriteChance(json, pair.A.Common!, pair.B.Common!, chance);
        json.WriteObjects("reasons", why, WriteReason);
    }

    private static void WriteChance(Utf8JsonWriter json, CommonBasis a, CommonBasis b, double chance)
    {
        double gap = Math.Log(a.MedianN / b.MedianN), sd = Math.Sqrt(a.LogSd * a.LogSd + b.LogSd * b.LogSd);
        json.WriteNumber("chance_stronger", chance);
        json.WriteNumber("ratio_low", Math.Exp(gap - Normal.NinetyFive * sd));
        json.WriteNumber("ratio_high", Math.Exp(gap + Normal.NinetyFive * sd));
        json.WriteBoolean("decided", chance is > OneSided or < 1 - OneSided);
    }

    private static void WriteReason(Utf8JsonWriter json, Reason reason)
    {
        json.WriteString("code", reason.Code);
        json.WriteString("why", Texts.Sentence(reason, new Settings()));
    }

    private static Outcome<string> OfTests(string csv)
    {
        var tests = TrialDocument.Read(csv);
        if (tests.Value is not { } document) return Outcome<string>.Refused(tests.Problems);
        var answer = Analysis.Of(document, new());
        return answer.Value is { } worked ? Outcome<string>.Of(Write(worked)) : Outcome<string>.Refused(answer.Problems);
    }

    private static string Write(TrialAnswer answer) => JsonOut.Text(json =>
    {
        json.WriteStartObject();
        json.WriteObjects("kinds", TrialRow.Of(answer), (j, r) =>
        {
            j.WriteString("kind", r.Kind);
            j.WriteNumber("n", r.Count);
            j.WriteMaybe("median_n", r.PredictiveMedianN);
            j.WriteMaybe("fractile_n", r.PredictiveFractileN);
        });
        json.WriteObjects("pairs", answer.Comparisons, (j, c) => WriteComparison(j, c, PairSettling.More(answer, c)));
        json.WriteNumber("decided", answer.Comparisons.Count(c => c.Decided));
        json.WriteObjects("assumptions", [.. answer.Reasons, new Reason("compare_pairs")], WriteReason);
        json.WriteEndObject();
    });

    private static void WriteComparison(Utf8JsonWriter json, KindComparison c, int? more)
    {
        json.WriteString("kind", c.Kind);
        json.WriteString("other", c.Other);
        json.WriteNumber("chance_stronger", c.Chance);
        json.WriteNumber("ratio_low", c.RatioLow);
        json.WriteNumber("ratio_high", c.RatioHigh);
        json.WriteBoolean("decided", c.Decided);
        if (!c.Decided && more is { } n) json.WriteNumber("tests_of_each", n);
    }
}
