using System.Diagnostics;
using Pattress.Planning.Buying;
using Pattress.Planning.Layout;
using Pattress.Planning.Programs;
using Pattress.Solvers;
using Pattress.Supports;
using Pattress.Tests.Planning.Buying;

namespace Pattress.Bench;

/// <summary>
/// Buying against hand methods on made-up houses, layout against symmetric placing on made-up walls, and how long both take.
/// Ratios are within one run.
/// </summary>
internal static class BuyingReport
{
    private const int Kinds = 30;

    public static async Task Run(int houses)
    {
        await Hand(houses);
        Layouts(houses);
        await Times();
    }

    private static async Task Hand(int houses)
    {
        var names = new[] { "proven cheapest, one kind a class", "proven cheapest mix", "cheapest kind for each bracket", "one strong kind wherever it goes", "what the shop has (half of the kinds)" };
        var sums = new (decimal Cost, int Bits, double Trip)[names.Length];
        for (int seed = 0; seed < houses; seed++)
        {
            var house = RandomHouse.Of(seed, 6, 30, Kinds);
            var random = new Random(seed);
            var tried = new[] { house, house with { Rules = house.Rules with { OneKindPerClass = false } }, Only(house, Cheapest), Only(house, Strong(house)), Only(house, Shop(house, random)) };
            for (int i = 0; i < tried.Length; i++)
            {
                var choice = (await Buyer.Solve(tried[i], new ScipSolver(), default))!;
                int bits = choice.Tools.Where((used, t) => used && house.Tools[t].Sort == "bit").Count();
                sums[i] = (sums[i].Cost + choice.Expected, sums[i].Bits + bits, sums[i].Trip + choice.SecondTrip);
            }
        }

        Line($"| {houses} made-up houses, 30 brackets in 6 classes, {Kinds} kinds (all numbers invented) | expected cost | against the proven | bits | chance of a second trip |\n|---|---|---|---|---|");
        for (int i = 0; i < names.Length; i++)
            Line($"| {names[i]} | {sums[i].Cost / houses:0.00} | {sums[i].Cost / sums[0].Cost:0.00} | {(double)sums[i].Bits / houses:0.0} | {sums[i].Trip / houses:0.00} |");
    }

    /// <summary>The house with one option left in each class, as a fitter without a program chose it: nothing is carried besides.</summary>
    private static BuyingCase Only(BuyingCase house, Func<BuyClass, BuyingCase, int> choose) => house with
    {
        Classes = [.. house.Classes.Select(c =>
        {
            int o = choose(c, house);
            return c with { Options = [c.Options[o]], States = [.. c.States.Select(s => s with { Holds = s.Holds.Contains(o) ? [0] : [] })] };
        })],
    };

    private static int Cheapest(BuyClass c, BuyingCase house) => Least(c, house, _ => true);

    private static int Least(BuyClass c, BuyingCase house, Func<BuyOption, bool> among) => Enumerable.Range(0, c.Options.Count).Where(o => c.Options[o].Main)
        .OrderBy(o => among(c.Options[o]) ? 0 : 1).ThenBy(o => c.Options[o].Count * (house.Kinds[c.Options[o].Kind].PiecePrice + ((decimal)house.Kinds[c.Options[o].Kind].Minutes * house.Rules.MinutePrice))).First();

    private static Func<BuyClass, BuyingCase, int> Strong(BuyingCase house)
    {
        int strong = Enumerable.Range(0, house.Kinds.Count).MaxBy(k => house.Classes.Sum(c => c.States.Where(s => s.Holds.Any(o => c.Options[o].Kind == k && c.Options[o].Main)).Sum(s => s.Probability)));
        return (c, h) => Least(c, h, o => o.Kind == strong);
    }

    private static Func<BuyClass, BuyingCase, int> Shop(BuyingCase house, Random random)
    {
        var has = Enumerable.Range(0, house.Kinds.Count).Where(_ => random.Next(2) == 0).ToHashSet();
        return (c, h) => Least(c, h, o => has.Contains(o.Kind));
    }

    private static void Layouts(int walls)
    {
        var random = new Random(20261126);
        var sums = new (double Met, int All)[3];
        int brackets = 0, lines = 0;
        for (int i = 0; i < walls; i++)
        {
            var wall = new SimulatorWall(random, WallTrouble.Plain);
            double width = Math.Min(wall.Length - 300, 1400 + (1000 * random.NextDouble())), left = 100 + ((wall.Length - width - 200) * random.NextDouble());
            List<LineReading> seen = [.. SimulatorFitters.Taps(wall, new Zone(left, left + width), "t"), new MagnetSweep("m", left, left + width, wall.Sweep(left, left + width))];
            var belief = SupportModel.Infer(new LineScan(wall.Length, seen, []));
            for (int m = 0; m < 3; m++)
            {
                var places = m == 0 ? [0, Steps(width) / 2, Steps(width)] : LayoutProgram.Best(Ask(belief, left, width, m == 1))!;
                double[] xs = m == 0 ? [left + 100, left + (width / 2), left + width - 100] : [.. places.Select(p => left + (p * 2))];
                int met = xs.Count(wall.Usable);
                sums[m] = (sums[m].Met + met, sums[m].All + (met == xs.Length ? 1 : 0));
            }

            (brackets, lines) = (brackets + 3, lines + 1);
        }

        Line($"\n| {lines} made-up walls, a pole with three brackets, taps each 40 mm and one magnet sweep | brackets that meet a support clear of its edge | all three do |\n|---|---|---|");
        foreach (var (name, m) in new[] { ("even, symmetric", 0), ("best symmetric", 1), ("best, not symmetric", 2) })
            Line($"| {name} | {sums[m].Met / brackets:0.000} | {(double)sums[m].All / lines:0.000} |");
    }

    private static int Steps(double width) => 2 * (int)(width / 4);

    private static LayoutCase Ask(SupportBelief belief, double left, double width, bool symmetric)
    {
        int last = Steps(width);
        return new([.. Enumerable.Range(0, last + 1).Select(i => belief.UsableAt(left + (i * 2)))], new bool[last + 1], 3, 20, 125, 75, 600, 0.001, symmetric) { EvenEnd = 50 };
    }

    internal static async Task Times()
    {
        Line("\n| what | median ms | greatest ms | median processor ms |\n|---|---|---|---|");
        foreach (var (name, classes, brackets) in new[] { ("40 brackets in 9 classes, 60 kinds", 9, 40), ("200 brackets in 25 classes, 60 kinds", 25, 200) })
        {
            var (first, both, bought) = (new List<(double Wall, double Processor)>(), new List<(double Wall, double Processor)>(), new List<(double Wall, double Processor)>());
            int searched = 0;
            for (int seed = 0; seed < 22; seed++)
            {
                var house = RandomHouse.Of(1000 + seed, classes, brackets, 60);
                var whole = await Clocked(async () =>
                {
                    var choice = (await Buyer.Solve(house, new ScipSolver(), default))!;
                    if (choice.By == BuyingChoice.OwnSearch) searched++;
                    return new(choice.Status, 0, 0, []);
                }, seed);
                var program = new BuyingProgram(house);
                var one = await Clocked(() => new ScipSolver().Solve(program.Program, 60, default), seed);
                var two = await Clocked(() => Ties.Solve(new ScipSolver(), program.Program, program.Ranks, program.MostRank, program.CostAbout, 60, default), seed);
                if (seed > 1) (first, both, bought) = ([.. first, one], [.. both, two], [.. bought, whole]);
            }

            Times($"{name}: bought, proven, ties broken ({searched} of 22 by the program's own search)", bought);
            Times($"{name}: proven", first);
            Times($"{name}: proven, ties broken", both);
        }

        var belief = SupportModel.Infer(new LineScan(6000, [new Tap("a", 600, TapSound.Solid)], []));
        var ask = Ask(belief, 100, 5600, false) with { Brackets = 12, SpanMin = 25, SpanMax = 500 };
        var took = Enumerable.Range(0, 200).Select(_ => Timed(() => LayoutProgram.Best(ask))).Skip(50).ToList();
        Line($"| layout of 12 brackets on {ask.Last + 1} places | {Median(took):0.000} | {took.Max():0.000} | |");
    }

    private static void Times(string name, List<(double Wall, double Processor)> times) =>
        Line($"| {name} | {Median([.. times.Select(t => t.Wall)]):0.0} | {times.Max(t => t.Wall):0.0} | {Median([.. times.Select(t => t.Processor)]):0.0} |");

    /// <summary>Wall clock and processor time, which a busy machine changes less.</summary>
    private static async Task<(double Wall, double Processor)> Clocked(Func<Task<ProgramAnswer>> solve, int seed)
    {
        long start = Stopwatch.GetTimestamp();
        var processor = Environment.CpuUsage.TotalTime;
        var answer = await solve();
        if (answer.Status != ProgramStatus.Optimal) Line($"not proven: seed {seed}");
        return (Stopwatch.GetElapsedTime(start).TotalMilliseconds, (Environment.CpuUsage.TotalTime - processor).TotalMilliseconds);
    }

    private static double Timed(Func<object?> work)
    {
        long start = Stopwatch.GetTimestamp();
        work();
        return Stopwatch.GetElapsedTime(start).TotalMilliseconds;
    }

    private static double Median(List<double> values) => values.Order().ElementAt(values.Count / 2);

    private static void Line(string text) => Console.WriteLine(text);
}
