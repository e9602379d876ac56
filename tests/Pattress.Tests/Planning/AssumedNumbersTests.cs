using Pattress.Jobs;
using Pattress.Jobs.Text;

namespace Pattress.Tests.Planning;

/// <summary>A number that nobody measured is shown as assumed wherever it is used.</summary>
public class AssumedNumbersTests
{
    public static TheoryData<string> Samples => [.. Embedded.Names("samples/").Where(n => n.EndsWith(".job.json", StringComparison.Ordinal))];

    [Theory, MemberData(nameof(Samples))]
    public void Every_assumed_step_of_the_working_is_among_the_assumptions_of_its_item(string sample)
    {
        var job = JobReader.Read(Embedded.Text(sample)).Value!;
        var items = Planner.Plan(job, PlanData.Embedded).Items;
        Assert.Contains(items, i => i.Brackets.Any(b => b.Working.Any(s => s.Clause.Contains("assumed"))));
        foreach (var item in items)
        {
            var numbers = item.Assumptions.SelectMany(a => a.Values).Select(v => v.Number).ToHashSet();
            foreach (var step in item.Brackets.SelectMany(b => b.Working).Where(s => s.Clause.Contains("assumed")))
                Assert.True(numbers.Contains(step.Value), $"{item.Id}: {step.Symbol} = {step.Value} ({step.Clause}) is used and not listed");
        }
    }

    [Theory, MemberData(nameof(Samples))]
    public void Every_assumed_number_has_a_name(string sample)
    {
        var job = JobReader.Read(Embedded.Text(sample)).Value!;
        var names = Planner.Plan(job, PlanData.Embedded).Items.SelectMany(i => i.Assumptions).SelectMany(a => a.Values)
            .Where(v => v.As == Shown.Name && v.Text.StartsWith("number.", StringComparison.Ordinal)).Select(v => v.Text).Distinct().ToList();
        Assert.NotEmpty(names);
        Assert.Equal([], names.Where(n => !Texts.Has(n)));
    }

    [Fact]
    public void Every_row_of_the_factors_has_a_name_or_stands_for_one_that_has()
    {
        string[] whole = ["duration", "creep", "damp"];
        var keys = CsvTable.FromEmbedded("data/strength/factors.csv").Rows.Select(r => r["key"]).Select(k => whole.FirstOrDefault(w => k.StartsWith(w + "_", StringComparison.Ordinal) && k != "creep_in_board") ?? k);
        Assert.Equal([], keys.Distinct().Where(k => !Texts.Has("number." + k)).Order());
    }

    /// <summary>What the toe presses on, what a thin plate pries, how deep the stud is: the numbers of a shelf's bracket in a stud.</summary>
    [Fact]
    public void A_shelf_on_studs_shows_toe_prying_depth_and_core()
    {
        var said = DemoHouse.Plan.Items.Single(i => i.Id == "book-shelf").Assumptions;
        foreach (string number in new[] { "number.toe_share", "number.prying", "number.screw_core_share", "number.timber_rho_k", "number.batch_cov" })
            Assert.Contains(said, a => a.Code.StartsWith("assume_number", StringComparison.Ordinal) && a.Values[0].Text == number);
        Assert.Contains(said, a => a.Code == "assume_toe" && a.Values[0].Number == 4);
        Assert.Contains(said, a => a.Code == "assume_stud_depth");
        Assert.Contains(said, a => a.Code == "board_bears");
        Assert.Contains(said, a => a.Code == "edge_distance_departure");
    }
}
