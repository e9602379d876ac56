using Pattress.Actions;
using Pattress.Actions.Fixtures;
using Pattress.Jobs;

namespace Pattress.Tests.Planning;

/// <summary>A job held to the American set, against hand arithmetic in inches and pounds.</summary>
public class UnitedStatesPlanTests
{
    private static readonly Job Job = DemoHouse.Job with { Settings = DemoHouse.Job.Settings with { Standards = "us", Units = "imperial", English = "american" } };

    private static double Step(ItemAnswer item, string symbol, string clause) =>
        item.Brackets[0].Working.First(s => s.Symbol == symbol && s.Clause.StartsWith(clause, StringComparison.Ordinal)).Value;

    /// <summary>
    /// Screw of 4 mm (0.157480 in) with 29 mm (1.141732 in) of thread in C16 (G = 310/840): W' = 2850 G² D p C_D = 111.6658 lbf = 496.714 N;
    /// lateral across 15 mm of plaster by TR12, mode IIIs 40.78693 lbf over R_d 2.2, x 1.6 = 29.66322 lbf = 131.949 N.
    /// </summary>
    [Fact]
    public void A_blind_on_timber_by_NDS()
    {
        var timber = DemoHouse.WithWall(Job, "outside", w => w with { Readings = [.. w.Readings.Where(r => !r.Id.StartsWith("outside-lintel", StringComparison.Ordinal))] });
        var blind = DemoHouse.Item(timber, "kitchen-blind");
        Assert.Equal(496.7142625, Step(blind, "W_adj", "NDS 2018 Table 11.3.1"), 1e-6);
        Assert.Equal(131.9485955, Step(blind, "Z_adj", "NDS 2018 Table 11.3.1"), 1e-6);
        Assert.DoesNotContain(blind.Brackets[0].Working, s => s.Clause.StartsWith("EN 1995", StringComparison.Ordinal));
    }

    /// <summary>Screw of 4.8 mm in an 18 mil stud that may twist: 0.8 x 0.85 x 0.478 x 4.8 x 310 / 3.0 = 161.2198 N.</summary>
    [Fact]
    public void A_coat_rack_on_steel_studs_by_AISI()
    {
        var rack = new Fixture
        {
            Id = "rack", Wall = "loft", What = "free", At = new(900, 1450), Brackets = [new(600, 1450), new(1200, 1450)],
            Numbers = new Dictionary<string, double> { ["mass_kg"] = 1, ["cog_out_mm"] = 15 },
            Words = new Dictionary<string, string> { ["class"] = "nuisance" },
        };
        var us = Job with { Fixtures = [.. Job.Fixtures.Where(f => f.Wall != "loft"), rack] };
        var answer = DemoHouse.Item(us, "rack");
        var steel = answer.Brackets.SelectMany(b => b.Working).Where(s => s.Clause == "AISI S100-16 J4" && s.Symbol == "P_a").ToList();
        Assert.NotEmpty(steel);
        Assert.Equal(161.21984, steel[0].Value, 1e-4);
    }

    /// <summary>Every action once, D + L; a permanent one that helps 0.6 (ASCE 7-16 2.4.1); EN 1990 factors of the job do not enter.</summary>
    [Fact]
    public void Actions_count_once()
    {
        Wrench dead = new(0, 0, 0, 0, -100, 0), live = new(50, 0, 0, 0, -40, 0), lifting = new(0, 0, 0, 0, 300, 0);
        Assert.Equal(new Wrench(50, 0, 0, 0, -140, 0), Combination.Design(dead, live, Job.Settings));
        Assert.Equal(240, Combination.Design(dead, lifting, Job.Settings).Vy, 1e-12);
        Assert.Equal(-1.35 * 100 - 1.5 * 40, Combination.Design(dead, live, DemoHouse.Job.Settings).Vy, 1e-12);
    }

    [Fact]
    public void The_basis_is_said() =>
        Assert.Contains(Planner.Plan(Job, PlanData.Embedded).Assumptions, a => a.Code == "assume_allowable_stress");

    /// <summary>
    /// EN 1995-1-1 8.7.2 covers screws from 6 mm on. Where a job lets no other document stand in, nobody knows what a thinner one holds, and
    /// its own steel does not say it.
    /// </summary>
    [Fact]
    public void A_screw_that_no_document_covers_is_not_chosen()
    {
        var job = DemoHouse.Job with { Settings = DemoHouse.Job.Settings with { Editions = new() { TimberDraft = "none", Nds = "none", Aisi = "none" } } };
        foreach (var b in Planner.Plan(job, PlanData.Embedded).Items.SelectMany(i => i.Brackets))
        {
            var used = b.Alternatives.Select(a => a.Fixing).Append(b.Fixing ?? "");
            Assert.DoesNotContain(used, f => f.StartsWith("wood_screw.", StringComparison.Ordinal) && Pattress.Fixings.FixingCatalogue.FromEmbedded.Find(f)!.ScrewMm < 6);
            Assert.DoesNotContain(used, f => f.StartsWith("steel_screw.", StringComparison.Ordinal));
        }
    }

    /// <summary>An edition that the program does not hold is refused with what it holds.</summary>
    [Fact]
    public void Editions_are_values_in_the_job()
    {
        string text = Embedded.Text("samples/demo-house.job.json").Replace("\"standards\": \"eurocode_uk\",", "\"standards\": \"eurocode_uk\", \"editions\": {\"pren1995_1_1\": \"none\", \"nds\": \"2024\", \"aisi_s100\": \"none\"},", StringComparison.Ordinal);
        var problem = Assert.Single(JobReader.Read(text).Problems);
        Assert.Equal(("$.settings.editions.nds", "one of 2018, none"), (problem.Path, problem.Allowed));
        var job = JobReader.Read(text.Replace("2024", "2018", StringComparison.Ordinal)).Value!;
        var pole = DemoHouse.Item(job, "bay-pole").Brackets[0].Working;
        Assert.Contains(pole, s => s.Clause.StartsWith("NDS 2018 12.2.2", StringComparison.Ordinal));
        Assert.DoesNotContain(pole, s => s.Clause.StartsWith("prEN", StringComparison.Ordinal));
    }
}
