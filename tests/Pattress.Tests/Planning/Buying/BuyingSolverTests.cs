using System.Diagnostics;
using System.Runtime.CompilerServices;
using System.Text.Json;
using Pattress.Planning.Buying;
using Pattress.Planning.Programs;
using Pattress.Solvers;

namespace Pattress.Tests.Planning.Buying;

/// <summary>
/// The buying program solved by SCIP, by HiGHS (through scipy, a program written apart from ours), by CP-SAT and by trying everything.
/// Costs are whole thousandths, so that equal means equal.
/// </summary>
public class BuyingSolverTests
{
    private static readonly ScipSolver Scip = new();

    [Fact]
    public async Task Trying_everything_finds_nothing_cheaper_in_500_tiny_problems()
    {
        for (int seed = 0; seed < 500; seed++)
        {
            var problem = RandomHouse.Of(seed, 1 + seed % 3, 1 + seed % 3 + seed % 5, 2 + seed % 4);
            var choice = await Buyer.Solve(problem, Scip, default);
            Assert.Equal(ProgramStatus.Optimal, choice!.Status);
            Assert.True(new BruteForce(problem).Least() == choice.Expected * 1000, $"seed {seed}: {new BruteForce(problem).Least()} and {choice.Expected * 1000}");
        }
    }

    [Fact]
    public async Task Scip_and_highs_reach_the_same_cost_on_200_houses_and_prove_it()
    {
        var programs = Enumerable.Range(0, 200).Select(seed => Program(seed)).ToList();
        double[] highs = Highs(programs);
        for (int i = 0; i < programs.Count; i++)
        {
            var answer = await Scip.Solve(programs[i], 60, default);
            Assert.Equal(ProgramStatus.Optimal, answer.Status);
            Assert.InRange(answer.Cost - answer.Bound, -0.4, 0.4);
            Assert.InRange(programs[i].Breach(answer.Values), 0, 1e-5);
            Assert.True(Math.Round(answer.Cost) == Math.Round(highs[i]), $"seed {i}: SCIP {answer.Cost}, HiGHS {highs[i]}");
        }
    }

    /// <summary>The houses of up to 12 brackets among the 200, bounds recorded; and twenty more that are smaller.</summary>
    [Fact]
    public async Task Cp_sat_reaches_it_too_on_houses_of_up_to_12_brackets()
    {
        var small = Enumerable.Range(0, 200).Where(seed => 8 + seed % 33 <= 12).Select(Program).ToList();
        Assert.InRange(small.Count, 30, 40);
        var others = Enumerable.Range(0, 20).Select(seed => new BuyingProgram(RandomHouse.Of(seed, 1 + seed % 4, 4 + seed % 9, 6)).Program);
        foreach (var (program, i) in small.Concat(others).Select((p, i) => (p, i)))
        {
            var scip = await Scip.Solve(program, 60, default);
            var sat = await new CpSatSolver().Solve(program, 60, default);
            Assert.Equal(ProgramStatus.Optimal, sat.Status);
            Assert.InRange(sat.Cost - sat.Bound, -0.4, 0.4);
            Assert.True(Math.Round(scip.Cost) == Math.Round(sat.Cost), $"house {i}: SCIP {scip.Cost}, CP-SAT {sat.Cost}");
        }
    }

    /// <summary>The program's own search, written apart from the program: the same cost and the same rank, and it gives up on few.</summary>
    [Fact]
    public async Task The_search_reaches_what_Scip_proves_on_200_houses()
    {
        int given = 0;
        for (int seed = 0; seed < 200; seed++)
        {
            var house = RandomHouse.Of(seed, 3 + seed % 7, 8 + seed % 33, 8 + seed % 16) is var any && seed % 5 == 0 ? any with { Rules = any.Rules with { NoSecondTrip = seed % 2 == 0, Avoid = ["kind_1", "kind_3"] } } : any;
            var program = new BuyingProgram(house);
            var scip = await Ties.Solve(Scip, program.Program, program.Ranks, program.MostRank, program.CostAbout, 60, default);
            if (Buyer.Searched(house, default) is not { } found) { given++; continue; }
            Assert.True((decimal)Math.Round(scip.Cost) == found.Expected * 1000, $"seed {seed}: SCIP {scip.Cost}, search {found.Expected}");
            Assert.Equal(found.Expected, found.Bound);
            Assert.True(Math.Round(program.Ranks.Select((r, i) => r * scip.Values[i]).Sum()) == Rank(house, found), $"seed {seed}: ranks differ");
        }
        Assert.InRange(given, 0, 10);
    }

    /// <summary>The second sum of a choice, by its definition: the place of each option, and of a trip that there are so many options.</summary>
    private static double Rank(BuyingCase house, BuyingChoice found) => found.Classes.Sum(c => c.Main.Sum(m => m.Option) + c.StandIns.Sum(s => s.Option) + c.Trips.Count * house.Classes[c.Class].Options.Count);

    [Fact]
    public async Task A_mix_is_never_dearer_than_one_kind_a_class()
    {
        for (int seed = 0; seed < 20; seed++)
        {
            var problem = RandomHouse.Of(seed, 4, 20, 12);
            var one = await Buyer.Solve(problem, Scip, default);
            var mix = await Buyer.Solve(problem with { Rules = problem.Rules with { OneKindPerClass = false } }, Scip, default);
            Assert.True(mix!.Expected <= one!.Expected, $"seed {seed}");
        }
    }

    [Fact]
    public async Task Ties_are_broken_the_same_way_whoever_solves()
    {
        for (int seed = 0; seed < 20; seed++)
        {
            var program = new BuyingProgram(RandomHouse.Of(seed, 4, 16, 10));
            var scip = await Ties.Solve(Scip, program.Program, program.Ranks, program.MostRank, program.CostAbout, 60, default);
            var highs = await Ties.Solve(new HighsSolver(), program.Program, program.Ranks, program.MostRank, program.CostAbout, 60, default);
            double Rank(ProgramAnswer a) => Math.Round(program.Ranks.Select((r, i) => r * a.Values[i]).Sum());
            Assert.Equal(Rank(scip), Rank(highs));
        }
    }

    /// <summary>By hand: y1 at 12 and y2 at 20, each counting 4, together 4: 3 apiece is paid in any case, 12 in all; 0 and 8 are left.</summary>
    [Fact]
    public void What_is_paid_in_any_case_is_taken_out()
    {
        var program = new IntegerProgram([new("y1", 0, 1, true, 12), new("y2", 0, 1, true, 20), new("x", 0, 9, true, 5)], [new("all", [new(0, 4), new(1, 4)], 4, 4)]);
        var (less, spared) = Unavoidable.Spared(program);
        Assert.Equal(12, spared);
        Assert.Equal([0.0, 8, 5], less.Unknowns.Select(u => u.Cost));
    }

    /// <summary>One solve for cost and rank gives the cost and the bound that the cost alone has.</summary>
    [Fact]
    public async Task Cost_and_bound_are_those_of_the_cost_alone()
    {
        for (int seed = 0; seed < 30; seed++)
        {
            var program = new BuyingProgram(RandomHouse.Of(seed, 5, 20, 12, seed % 3 != 0));
            var alone = await Scip.Solve(program.Program, 60, default);
            var both = await Ties.Solve(Scip, program.Program, program.Ranks, program.MostRank, program.CostAbout, 60, default);
            Assert.Equal((ProgramStatus.Optimal, Math.Round(alone.Cost), Math.Round(alone.Cost)), (both.Status, Math.Round(both.Cost), both.Bound));
        }
    }

    private static IntegerProgram Program(int seed) => new BuyingProgram(RandomHouse.Of(seed, 3 + seed % 7, 8 + seed % 33, 8 + seed % 16, seed % 4 != 0)).Program;

    private static double[] Highs(IReadOnlyList<IntegerProgram> programs)
    {
        string input = Path.GetTempFileName();
        try
        {
            using (var file = File.Create(input))
            using (var json = new Utf8JsonWriter(file)) Write(json, programs);
            var start = new ProcessStartInfo("/usr/bin/python3", [Script(), input]) { RedirectStandardOutput = true, RedirectStandardError = true };
            using var python = Process.Start(start)!;
            var errors = python.StandardError.ReadToEndAsync();
            string output = python.StandardOutput.ReadToEnd();
            python.WaitForExit();
            Assert.True(python.ExitCode == 0, "scipy is wanted (python3-scipy): " + errors.Result);
            return [.. JsonDocument.Parse(output).RootElement.EnumerateArray().Select(v => v.GetDouble())];
        }
        finally { File.Delete(input); }
    }

    private static void Write(Utf8JsonWriter json, IReadOnlyList<IntegerProgram> programs)
    {
        json.WriteStartArray();
        foreach (var p in programs)
        {
            json.WriteStartObject();
            Numbers(json, "cost", p.Unknowns.Select(u => u.Cost));
            Numbers(json, "upper", p.Unknowns.Select(u => u.Upper));
            Numbers(json, "whole", p.Unknowns.Select(u => u.Whole ? 1.0 : 0));
            json.WriteStartArray("rows");
            foreach (var row in p.Rows)
            {
                json.WriteStartObject();
                Numbers(json, "at", row.Terms.Select(t => (double)t.Unknown));
                Numbers(json, "times", row.Terms.Select(t => t.Times));
                Numbers(json, "bounds", [double.IsFinite(row.Lower) ? row.Lower : -1e30, double.IsFinite(row.Upper) ? row.Upper : 1e30]);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Numbers(Utf8JsonWriter json, string name, IEnumerable<double> numbers)
    {
        json.WriteStartArray(name);
        foreach (double n in numbers) json.WriteNumberValue(n);
        json.WriteEndArray();
    }

    private static string Script([CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "References", "milp_reference.py");
}
