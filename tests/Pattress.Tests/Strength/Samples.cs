using Pattress.Strength;

namespace Pattress.Tests.Strength;

/// <summary>Inputs within a rule's ranges, from a fixed seed.</summary>
internal static class Samples
{
    internal static IEnumerable<double[]> Of(Rule rule, int count)
    {
        var random = new Random(20_240 + rule.Id.Length);
        for (int i = 0; i < count; i++) yield return [.. rule.Parameters.Select(p => Draw(p, random))];
    }

    internal static double Draw(Parameter p, Random random)
    {
        if (p.Words.Count > 0) return random.Next(p.Words.Count);
        bool whole = p.Symbol is "n" or "lot" or "failures" or "service_class";
        double u = random.NextDouble();
        double low = Math.Max(p.Min, p.Max * 1e-6);
        double value = p.Max / low > 100 ? low * Math.Pow(p.Max / low, u) : p.Min + u * (p.Max - p.Min);
        return whole ? Math.Round(value) : value;
    }

    /// <summary>A sample that the rule covers, or null where none was met.</summary>
    internal static double[]? Covered(Rule rule) => Of(rule, 400).FirstOrDefault(x => rule.Evaluate(x).Covered);
}
