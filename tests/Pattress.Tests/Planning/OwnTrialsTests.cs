using Pattress.Jobs;
using Pattress.Jobs.Proofs;

namespace Pattress.Tests.Planning;

/// <summary>The user's own tests and pulls in a job: what they raise, what they lower, what they stop, and the way back.</summary>
public class OwnTrialsTests
{
    private static readonly Job Flat = DemoHouse.Read("rented-flat");

    private static readonly PlanAnswer FlatPlan = Planner.Plan(Flat, PlanData.Embedded);

    private static readonly ItemAnswer OnBoard = FlatPlan.Items.Single(i => i.Id == "picture");

    private static readonly string Size = OnBoard.Assumptions.First(a => a.Code == "assume_no_trials").Values[0].Text;

    private static OwnTest Test(int i, double load, string how = "tension", double? board = 9.5) =>
        new() { Id = $"own{i}", Fixing = Size, Load = how, LoadN = load, BoardMm = board, Moisture = "dry" };

    private static IEnumerable<OwnTest> Series(params double[] loads) =>
        loads.Select((l, i) => Test(i, l)).Concat(loads.Select((l, i) => Test(100 + i, l, "shear")));

    private static ItemAnswer With(IEnumerable<OwnTest> tests, params ProofRecord[] proofs) =>
        DemoHouse.Item(Flat with { Trials = [.. tests], Proofs = proofs }, OnBoard.Id);

    private static AlternativeAnswer? Judged(ItemAnswer item) =>
        item.Brackets.Select(b => b.Fixing == Size ? new(Size, b.Utilisation, b.Governs, b.ProbabilityOfFailure, b.PriceEach, 1) : b.Alternatives.FirstOrDefault(a => a.Fixing == Size)).FirstOrDefault(a => a is not null);

    [Fact]
    public void Five_strong_tests_carry_more_than_the_mechanics_and_are_named_as_the_basis()
    {
        var after = With(Series(1500, 1600, 1550, 1450, 1580));
        Assert.True(Judged(after)!.Utilisation < Judged(OnBoard)!.Utilisation);
        Assert.Contains(after.Brackets, b => b.Basis == "trial");
        Assert.Contains(after.Assumptions, a => a.Code == "assume_own_trials");
    }

    [Fact]
    public void Without_tests_every_board_fixing_says_so() => Assert.Contains(OnBoard.Assumptions, a => a.Code == "assume_no_trials");

    /// <summary>The doubt is said as a distribution: its scatter in all (0.25, assumed), and what the mechanics make of it by the hand arithmetic of docs/theory/strength.md: 0.13239 and 0.10595.</summary>
    [Fact]
    public void Model_error_stands_in_the_plan()
    {
        var said = OnBoard.Assumptions.First(a => a.Code == "assume_no_trials").Values;
        Assert.Equal(0.25, said[1].Number);
        Assert.Equal(0.13239, said[2].Number, 2e-5);
        Assert.Equal(0.10595, said[3].Number, 2e-5);
    }

    /// <summary>Four tests, tests in a board nobody named, and tests in a thicker board raise nothing.</summary>
    [Fact]
    public void Too_few_or_other_boards_raise_nothing()
    {
        double before = Judged(OnBoard)!.Utilisation;
        Assert.Equal(before, Judged(With(Series(1500, 1600, 1550, 1450)))!.Utilisation, 12);
        Assert.Equal(before, Judged(With(Series(1500, 1600, 1550, 1450, 1580).Select(t => t with { BoardMm = null })))!.Utilisation, 12);
        Assert.Equal(before, Judged(With(Series(1500, 1600, 1550, 1450, 1580).Select(t => t with { BoardMm = 25 })))!.Utilisation, 12);
    }

    [Fact]
    public void One_failure_far_below_the_mechanics_lowers()
    {
        var after = With([Test(1, 5)]);
        Assert.Null(Judged(after));
        Assert.Contains(after.Brackets, b => b.Rejected.Any(r => r.Fixing == Size));
    }

    [Fact]
    public void A_test_taken_back_is_as_if_it_had_never_been() =>
        Assert.Equal(PlanJson.Write(FlatPlan, Flat.Settings),
            PlanJson.Write(Planner.Plan(Flat with { Trials = [Test(1, 5) with { Withdrawn = true }] }, PlanData.Embedded), Flat.Settings));

    /// <summary>R_d = R_k k_damp k_duration k_spacing / gamma_M by hand; R_k from five equal tests is their load, since nothing scatters.</summary>
    [Fact]
    public void Tests_without_scatter_give_their_load_as_characteristic()
    {
        var steps = With(Series(800, 800, 800, 800, 800)).Brackets.First(b => b.Basis == "trial").Working;
        Assert.Contains(steps, s => s.Symbol == "R_k" && s.Clause.StartsWith("own tests", StringComparison.Ordinal) && Math.Abs(s.Value - 800) < 1e-6);
    }

    private static ProofRecord Pull(int i, string result) => new() { Id = $"pull{i}", Fixture = OnBoard.Id, Bracket = 0, Hole = 0, LoadN = 80, Result = result };

    [Fact]
    public void One_of_three_that_fails_asks_for_as_many_again()
    {
        var after = With([], Pull(1, "held"), Pull(2, "held"), Pull(3, "came_away"));
        Assert.Equal((Verdict.CheckFirst, "proof_test_more"), (after.Verdict, after.Why.Code));
        Assert.Equal(OnBoard.Verdict, With([], [Pull(1, "held"), Pull(2, "held"), Pull(3, "came_away"), .. Enumerable.Range(4, 3).Select(i => Pull(i, "held"))]).Verdict);
    }

    [Fact]
    public void Two_failures_stop_and_taking_them_back_goes_back()
    {
        Assert.Equal(Verdict.NotHere, With([], Pull(1, "held"), Pull(2, "moved"), Pull(3, "came_away")).Verdict);
        Assert.Equal(OnBoard.Verdict, With([], Pull(1, "held"), Pull(2, "moved") with { Withdrawn = true }, Pull(3, "came_away") with { Withdrawn = true }).Verdict);
    }

    [Fact]
    public void Each_fixing_is_pulled_above_its_action_and_below_the_cap()
    {
        IReadOnlyList<ItemProof> proofs = [.. ProofOf.All(DemoHouse.Plan, DemoHouse.Job), .. ProofOf.All(FlatPlan, Flat)];
        var pulls = proofs.SelectMany(p => p.Pulls).ToList();
        Assert.NotEmpty(pulls);
        Assert.All(pulls, p => Assert.True(p.LoadN >= p.ActionN && p.LoadN <= p.DamageCapN + 1e-9));
        Assert.All(pulls, p => Assert.All(p.Ways, w => Assert.Equal(w.MostN >= p.LoadN, w.Reaches)));
        // 10 litres of water are 98 N (10 kg x 9.80665 m/s2).
        Assert.All(proofs.SelectMany(p => p.Hangs), h => Assert.Equal(98.0665, h.WeightN / h.Litres * 10, 6));
    }

    [Fact]
    public void Rails_that_hold_people_are_for_a_competent_tester()
    {
        var rails = ProofOf.All(DemoHouse.Plan, DemoHouse.Job).Where(p => p.Class == Pattress.Actions.ConsequenceClass.HoldsPerson).ToList();
        Assert.NotEmpty(rails);
        Assert.All(rails.Where(r => r.Scope != "nothing"), r => Assert.Contains(r.Reasons, x => x.Code == "proof_competent_tester"));
        Assert.All(rails, r => Assert.Empty(r.Pulls));
    }

    [Fact]
    public void A_weight_that_held_lowers_the_chance_of_failure()
    {
        var hang = ProofOf.Item(OnBoard, Flat).Hangs;
        int worst = OnBoard.Brackets.MaxBy(b => b.ProbabilityOfFailure)!.Index;
        var state = ProofOf.Item(OnBoard, Flat with { Proofs = [new ProofRecord { Id = "hung", Fixture = OnBoard.Id, Bracket = worst, LoadN = hang.First(h => h.Bracket == worst).WeightN, Result = "held" }] }).State;
        Assert.Equal("proof_passed", state.Demands.Code);
        Assert.InRange(state.FailureAfter!.Value, 0, state.FailureBefore!.Value);
    }
}
