using System.Text.Json;
using Pattress.Jobs.Doors;
using Pattress.Quantities;
using Pattress.Trials.Claims;
using Pattress.Trials.Special;

namespace Pattress.Jobs.Certain;

/// <summary>A claim as a person types it in: words of the document, numbers as they stand on the packet.</summary>
/// <param name="Number">With its unit: <c>25 kg</c>, <c>0.3 kN</c>.</param>
public sealed record ClaimWords(string Kind = "", string Number = "", string Load = "not_said", string Basis = "not_said", double? Factor = null, string Board = "");

/// <summary>One claim on the common basis (N), or an order of merit without numbers.</summary>
public sealed record ClaimSide(string Kind, double? MeanN, double? LowN, double? HighN, IReadOnlyList<Reason> Reasons);

/// <summary>Two claims side by side.</summary>
/// <param name="Comparable">True when they may be set against each other as they stand.</param>
/// <param name="ChanceStronger">That the first fixing is the stronger, both on the common basis; null for different loads.</param>
/// <param name="Reasons">Why they are not comparable.</param>
public sealed record ClaimsCompared(IReadOnlyList<ClaimSide> Claims, bool Comparable, double? ChanceStronger, IReadOnlyList<Reason> Reasons)
{
    /// <summary>Reads two claims by the door of <c>pattress compare</c> and compares them.</summary>
    public static Outcome<ClaimsCompared> Of(ClaimWords a, ClaimWords b)
    {
        var read = Door.Read(Document([a, b]), CompareShapes.Document);
        if (read.Value is not { } entry) return Outcome<ClaimsCompared>.Refused(read.Problems);
        var problems = new ProblemList();
        var claims = ClaimsRead.Of(entry, problems);
        return problems.IsEmpty ? Outcome<ClaimsCompared>.Of(Compare(claims[0], claims[1])) : Outcome<ClaimsCompared>.Refused(problems.Problems);
    }

    private static ClaimsCompared Compare(ClaimAsRead a, ClaimAsRead b)
    {
        var why = ClaimReading.WhyNotComparable(a.Claim, b.Claim);
        return new([Side(a), Side(b)], why.Count == 0, Chance(a, b), why);
    }

    private static ClaimSide Side(ClaimAsRead c) => c.Common is not { } common ? new(c.Claim.Kind, null, null, null, c.Reasons)
        : new(c.Claim.Kind, common.MedianN, common.MedianN * Math.Exp(-Normal.NinetyFive * common.LogSd), common.MedianN * Math.Exp(Normal.NinetyFive * common.LogSd), c.Reasons);

    /// <summary>Only where both say the same kind of load: a pull and a shear are two questions.</summary>
    internal static double? Chance(ClaimAsRead a, ClaimAsRead b) =>
        a.Common is { } x && b.Common is { } y && Direction(a.Claim) == Direction(b.Claim) && Direction(a.Claim) != ClaimedLoad.NotSaid
            ? Normal.Cdf(Math.Log(x.MedianN / y.MedianN) / Math.Sqrt(x.LogSd * x.LogSd + y.LogSd * y.LogSd)) : null;

    private static ClaimedLoad Direction(Claim c) => c.Load == ClaimedLoad.Cantilever ? ClaimedLoad.Tension : c.Load;

    private static string Document(IReadOnlyList<ClaimWords> claims) => JsonOut.Text(json =>
    {
        json.WriteStartObject();
        json.WriteObjects("claims", claims, Write);
        json.WriteEndObject();
    });

    private static void Write(Utf8JsonWriter json, ClaimWords claim)
    {
        json.WriteString("kind", claim.Kind);
        json.WriteString(QuantityText.TryParse(claim.Number, Dimension.MassKg, out _, out _) ? "load_kg" : "load_n", claim.Number);
        json.WriteString("load", claim.Load);
        json.WriteString("basis", claim.Basis);
        json.WriteMaybe("safety_factor", claim.Factor);
        json.WriteMaybe("board", claim.Board);
    }
}
