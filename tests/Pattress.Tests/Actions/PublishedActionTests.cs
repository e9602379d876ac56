using System.Globalization;
using Pattress.Actions;
using Pattress.Actions.Fixtures;
using Pattress.Jobs;
using Pattress.Tests.Beams;
using Pattress.Working;

namespace Pattress.Tests.Actions;

/// <summary>Weights and actions against other people's numbers (published_i_actions.csv); each row names its source.</summary>
public sealed class PublishedActionTests
{
    private static readonly CsvTable Table = CsvTable.Parse(File.ReadAllText("Published/published_i_actions.csv"));

    public static TheoryData<int> Rows => [.. Enumerable.Range(0, Table.Rows.Count)];

    [Theory]
    [MemberData(nameof(Rows))]
    public void Fixture_agrees_with_the_table(int index)
    {
        var row = Table.Rows[index];
        var trace = new Trace();
        var actions = FixtureLoads.Of(Fixture(row), FixtureSamples.Wall, new Settings(), trace);
        PublishedBeamTests.Check(row, Quantity(row["quantity"], actions, trace));
    }

    private static double Quantity(string quantity, FixtureActions actions, Trace trace)
    {
        string[] parts = quantity.Split(':');
        if (parts.Length == 4) return Component(actions.Case(int.Parse(parts[0], CultureInfo.InvariantCulture), parts[1]), parts[2], parts[3]);
        return quantity == "mass" ? actions.MassKg : trace.Steps.Single(s => s.Symbol == quantity).Value;
    }

    private static double Component(LoadCase c, string part, string component)
    {
        var w = part switch { "G" => c.Permanent, "Q" => c.Variable, _ => c.Design };
        return component switch { "N" => w.N, "Mx" => w.Mx, "My" => w.My, "Vx" => w.Vx, "Vy" => w.Vy, _ => w.Tz };
    }

    private static Fixture Fixture(CsvTable.Row row)
    {
        var words = Pairs(row["words"]).ToDictionary(p => p[0], p => p[1]);
        var fixture = FixtureSamples.Of(row["what"], [.. Pairs(row["numbers"]).Select(p => (p[0], N(p[1])))]);
        IEnumerable<string> brackets = words.Remove("at", out string? at) ? at.Split(' ') : [];
        return fixture with { Words = words, Brackets = [.. brackets.Select(b => b.Split(':')).Select(b => new Point(3000 + N(b[0]), 1500 + N(b[1])))] };
    }

    private static IEnumerable<string[]> Pairs(string text) => text.Split(';', StringSplitOptions.RemoveEmptyEntries).Select(p => p.Split('='));

    private static double N(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
