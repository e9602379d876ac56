using Pattress.Quantities;
using Pattress.Strength;
using Pattress.Strength.Standards.BS_7671_2018;

namespace Pattress.Tests.Published;

/// <summary>Every printed value of the standards, from the tables beside this file.</summary>
public class RuleValuesTests
{
    public static TheoryData<int, string> Rows => [.. All.Select((r, i) => (i, $"{r.Id} {r.Rule}"))];

    private static readonly PublishedRow[] All = [.. PublishedRow.Read("published_*_rules.csv")];

    [Theory]
    [MemberData(nameof(Rows))]
    public void Printed_value(int index, string name)
    {
        var row = All[index];
        if (row.Rule.StartsWith("zones", StringComparison.Ordinal)) Assert.Equal(row.Expected, Zone(row));
        else if (row.Expected == "not_covered") Assert.False(Evaluate(row).Covered, name);
        else Assert.Equal(row.Value, Number(row), row.Tolerance * row.Factor * (1 + 1e-9));
    }

    internal static double Number(PublishedRow row) => row.Rule.Split('.')[0] switch
    {
        "quantity" => Quantity(row),
        "series" => PlateSeries.Of(row.Rule[7..], row.Input),
        _ => Evaluate(row).Value,
    };

    private static double Quantity(PublishedRow row)
    {
        Assert.True(QuantityText.TryParse(row.Input, Enum.Parse<Dimension>(row.Rule[9..]), out double value));
        return value;
    }

    private static RuleResult Evaluate(PublishedRow row)
    {
        var answer = RuleBook.Evaluate(row.Rule, row.Inputs);
        Assert.True(answer.Ok, string.Join("; ", answer.Problems));
        return answer.Value!.Result;
    }

    private static string Zone(PublishedRow row) => row.Rule switch
    {
        "zones.other_face" => YesNo(CableZones.OtherFaceCounts(double.Parse(row.Input))),
        "zones.needed" => YesNo(CableZones.NeedsZone(double.Parse(row.Input))),
        _ => StripAt(row.Inputs),
    };

    private static string YesNo(bool yes) => yes ? "yes" : "no";

    private static string StripAt(Dictionary<string, string> inputs)
    {
        double[] face = Numbers(inputs["face"]), at = Numbers(inputs["at"]);
        Accessory[] accessories = inputs.TryGetValue("accessory", out string? a) ? [Socket(Numbers(a))] : [];
        double[] corners = inputs.TryGetValue("corner", out string? c) ? Numbers(c) : [];
        var met = CableZones.At(CableZones.Strips(new WallFace(face[0], face[1], accessories, corners)), at[0], at[1]);
        return met.Count == 0 ? "none" : met.Single().Kind;
    }

    private static Accessory Socket(double[] x) => new("socket", x[0], x[1], x[2], x[3]);

    private static double[] Numbers(string text) => [.. text.Split(',').Select(double.Parse)];
}
