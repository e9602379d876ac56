using System.Globalization;
using Pattress.Actions.Beams;
using Pattress.Tests.Published;

namespace Pattress.Tests.Beams;

/// <summary>Continuous-beam tables and other people's worked beams (published_c.csv); units are those of each row.</summary>
public class PublishedBeamTests
{
    private static readonly CsvTable Table = CsvTable.Parse(File.ReadAllText("Published/published_c.csv"));

    private static readonly string[] Special = ["moving", "airy", "foundation", "shelf"];

    public static TheoryData<int> Rows => [.. Enumerable.Range(0, Table.Rows.Count).Where(i => !IsSpecial(Table.Rows[i]))];

    private static bool IsSpecial(CsvTable.Row row) =>
        Special.Any(s => row["supports"].StartsWith(s, StringComparison.Ordinal) || row["loads"] == s);

    [Theory]
    [MemberData(nameof(Rows))]
    public void Beam_agrees_with_the_table(int index)
    {
        var row = Table.Rows[index];
        var answer = BeamSolver.Solve(BeamText.Beam(row), BeamText.Loads(row["loads"]));
        Assert.NotNull(answer);
        Check(row, Quantity(answer, row["quantity"], row.Number("length")));
    }

    internal static IEnumerable<CsvTable.Row> Of(string id) => Table.Rows.Where(r => r["id"] == id);

    /// <summary>Tolerance: half the last printed digit, or the row's own with its reason.</summary>
    internal static void Check(CsvTable.Row row, double value)
    {
        if (row["tolerance"].Length > 0) Assert.NotEmpty(row["reason"]);
        double tolerance = row.MaybeNumber("tolerance") ?? HalfDigit(row["expected"]);
        Deviations.Note(row["source"], row["id"], row.Number("expected"), value);
        Assert.True(Math.Abs(value - row.Number("expected")) <= tolerance * 1.000001,
            $"{row["id"]} {row["quantity"]}: {value.ToString("R", CultureInfo.InvariantCulture)} against {row["expected"]}");
    }

    internal static double HalfDigit(string printed)
    {
        int point = printed.IndexOf('.', StringComparison.Ordinal);
        return 0.5 * Math.Pow(10, point < 0 ? 0 : point + 1 - printed.Length);
    }

    private static double Quantity(BeamAnswer a, string name, double length)
    {
        if (name.Contains('@', StringComparison.Ordinal))
        {
            double at = double.Parse(name[2..], CultureInfo.InvariantCulture);
            return name[0] == 'M' ? a.MomentAt(at) : a.DeflectionAt(at);
        }
        if (name[0] == 'R') return a.Reactions[int.Parse(name[1..], CultureInfo.InvariantCulture)];
        return name switch
        {
            "Mmax" => a.MomentMax.Value,
            "Mmin" => a.MomentMin.Value,
            "Dmax" => a.DeflectionMax.Value,
            "Dmin" => a.DeflectionMin.Value,
            "Dat" => Math.Min(a.DeflectionMax.At, length - a.DeflectionMax.At),
            _ => throw new ArgumentException(name),
        };
    }
}

/// <summary>Beams as the published tables write them.</summary>
internal static class BeamText
{
    internal static Beam Beam(CsvTable.Row row) =>
        new(row.Number("length"), row.Number("ei"), [.. row["supports"].Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Support)]);

    internal static BeamLoads Loads(string text)
    {
        var parts = text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(t => t.Split(':')).ToList();
        return new(
            [.. parts.Where(p => p[0] == "u").Select(p => new UniformLoad(N(p[1]), N(p[2]), N(p[3])))],
            [.. parts.Where(p => p[0] == "p").Select(p => new PointLoad(N(p[1]), N(p[2])))]);
    }

    private static BeamSupport Support(string text)
    {
        var parts = text.Split(':');
        var support = new BeamSupport(N(parts[0]));
        foreach (string p in parts.Skip(1))
            support = p == "c" ? support with { Clamped = true }
                : p.StartsWith("k=", StringComparison.Ordinal) ? support with { Stiffness = N(p[2..]) }
                : support with { Settlement = N(p[2..]) };
        return support;
    }

    internal static double N(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
