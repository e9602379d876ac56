using System.Globalization;

namespace Pattress.Tests.Published;

/// <summary>A printed value: which rule, from what, with what result and tolerance, and who printed it.</summary>
public sealed record PublishedRow(string Id, string Section, string Rule, string Input, string Expected, double Factor, double Tolerance, string Source)
{
    internal static string Folder => Path.Combine(AppContext.BaseDirectory, "Published");

    internal static IEnumerable<PublishedRow> Read(string pattern) => Directory.GetFiles(Folder, pattern).Order(StringComparer.Ordinal)
        .SelectMany(f => CsvTable.Parse(File.ReadAllText(f)).Rows)
        .Select(r => new PublishedRow(r["id"], r["section"], r["rule"], r["input"], r["expected"], Unit(r["unit"]), r.MaybeNumber("tolerance") ?? 0, r["source"]));

    public double Value => double.Parse(Expected, NumberStyles.Float, CultureInfo.InvariantCulture) * Factor;

    public Dictionary<string, string> Inputs => Input.Split(';', StringSplitOptions.RemoveEmptyEntries)
        .Select(p => p.Split('=', 2)).ToDictionary(p => p[0].Trim(), p => p[1].Trim());

    // One printed unit in the rule's own; kg25 is the mass whose weight was taken at 10 m/s².
    private static double Unit(string unit) => unit switch
    {
        "" => 1,
        "lbf" => 4.4482216152605,
        "lbf/in" => 4.4482216152605 / 25.4,
        "psi" => 4.4482216152605 / 645.16,
        "in" => 25.4,
        "Nm" or "kN" => 1000,
        "kgf" => 9.80665,
        "kg25" => 10,
        _ => throw new FormatException(unit),
    };
}
