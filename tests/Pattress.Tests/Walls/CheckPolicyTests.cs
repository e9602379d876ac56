using Pattress.Walls;

namespace Pattress.Tests.Walls;

public class CheckPolicyTests
{
    /// <summary>The whole policy tree written out: every check at every record, no pruning, no sharing.</summary>
    private static double Tree(double[] joint, List<CheckOffer> left, CheckDecision d)
    {
        double best = d.Loss.Min(row => row.Zip(joint, (l, j) => l * j).Sum());
        foreach (var check in left)
        {
            double value = check.Price * joint.Sum();
            foreach (var like in check.Likelihood)
                value += Tree([.. joint.Zip(like, (j, l) => j * l)], [.. left.Where(c => !ReferenceEquals(c, check))], d);
            best = Math.Min(best, value);
        }
        return best;
    }

    private static (double[] Prior, List<CheckOffer> Offers, CheckDecision Decision) Random(Random r, int checks, int outcomes, int hypotheses, double price)
    {
        double[] Row() => [.. Enumerable.Range(0, hypotheses).Select(_ => r.NextDouble())];
        double[] prior = Row();
        double sum = prior.Sum();
        List<CheckOffer> offers = [.. Enumerable.Range(0, checks).Select(c =>
        {
            double[][] like = [.. Enumerable.Range(0, outcomes).Select(_ => Row().Select(x => Math.Pow(x, 3)).ToArray())];
            for (int h = 0; h < hypotheses; h++)
            {
                double total = like.Sum(l => l[h]);
                foreach (var l in like) l[h] /= total;
            }
            return new CheckOffer($"c{c}", price * (0.5 + r.NextDouble()), [.. Enumerable.Range(0, outcomes).Select(o => $"o{o}")], like);
        })];
        return ([.. prior.Select(p => p / sum)], offers, new(["a", "b", "c"], [Row(), Row(), Row()]));
    }

    [Fact]
    public void Brute_force_policy_trees_of_up_to_three_checks()
    {
        var r = new Random(7);
        for (int i = 0; i < 300; i++)
        {
            var (prior, offers, decision) = Random(r, r.Next(0, 4), r.Next(2, 4), r.Next(2, 8), 0.01 + (r.NextDouble() * 0.05));
            Assert.Equal(Tree(prior, offers, decision), CheckPolicy.Next(prior, offers, decision).LossBest, 1e-12);
        }
    }

    /// <summary>The tree again, with prices that fall once the last check has been done.</summary>
    private static double Tree(double[] joint, List<CheckOffer> left, CheckOffer last, CheckDecision d)
    {
        double best = d.Loss.Min(row => row.Zip(joint, (l, j) => l * j).Sum());
        foreach (var check in left)
        {
            double value = (left.Contains(last) ? check.Price : check.PriceAfterLast ?? check.Price) * joint.Sum();
            foreach (var like in check.Likelihood)
                value += Tree([.. joint.Zip(like, (j, l) => j * l)], [.. left.Where(c => !ReferenceEquals(c, check))], last, d);
            best = Math.Min(best, value);
        }
        return best;
    }

    [Fact]
    public void Brute_force_policy_trees_where_a_check_is_cheaper_after_the_last_one()
    {
        var r = new Random(11);
        for (int i = 0; i < 200; i++)
        {
            var (prior, offers, decision) = Random(r, r.Next(2, 4), r.Next(2, 4), r.Next(2, 8), 0.01 + (r.NextDouble() * 0.05));
            offers = [.. offers.Select((o, k) => k == offers.Count - 1 ? o : o with { PriceAfterLast = o.Price * r.NextDouble() })];
            Assert.Equal(Tree(prior, offers, offers[^1], decision), CheckPolicy.Next(prior, offers, decision).LossBest, 1e-12);
        }
    }

    [Fact]
    public void At_the_end_of_the_policy_two_checks_that_only_decide_together_have_decided()
    {
        double[][] x = [[1, 1, 0, 0], [0, 0, 1, 1]], y = [[1, 0, 1, 0], [0, 1, 0, 1]];
        CheckOffer[] offers = [new("x", 0.1, ["0", "1"], x), new("y", 0.1, ["0", "1"], y)];
        var choice = CheckPolicy.Next([0.25, 0.25, 0.25, 0.25], offers, new(["same", "differ"], [[0, 1, 1, 0], [1, 0, 0, 1]]));
        Assert.Equal((0.5, 0.5, 1.0), (choice.Before, choice.After, choice.AtEnd)); // exclusive or: one sign alone tells nothing, both tell all
    }

    [Fact]
    public void Nothing_is_checked_when_nothing_is_worth_its_price()
    {
        var (prior, offers, decision) = Random(new(3), 3, 3, 5, 10);
        Assert.Equal(-1, CheckPolicy.Next(prior, offers, decision).Check);
    }

    [Fact]
    public void Two_checks_that_only_decide_together_are_found_though_neither_alone_is_worth_it()
    {
        // Loss hangs on the exclusive or of two signs: one sign alone tells nothing of what to do.
        double[][] x = [[1, 1, 0, 0], [0, 0, 1, 1]], y = [[1, 0, 1, 0], [0, 1, 0, 1]];
        CheckOffer[] offers = [new("x", 0.1, ["0", "1"], x), new("y", 0.1, ["0", "1"], y)];
        var choice = CheckPolicy.Next([0.25, 0.25, 0.25, 0.25], offers, new(["same", "differ"], [[0, 1, 1, 0], [1, 0, 0, 1]]));
        Assert.Equal((0, 0.5, 0.2), (choice.Check, choice.LossNow, Math.Round(choice.LossBest, 12)));
    }

    [Fact]
    public void Ten_checks_of_three_outcomes_over_twelve_walls_are_few_records()
    {
        var (prior, offers, decision) = Random(new(5), 10, 3, 12, 0.02);
        Assert.InRange(CheckPolicy.Next(prior, offers, decision).States, 1, 1 << 20);
    }
}
