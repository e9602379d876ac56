using CsCheck;
using Pattress.Walls;

namespace Pattress.Tests.Walls;

public class WallModelTests
{
    private static readonly Gen<WallReading> AnyReading = Gen.Select(Gen.Int[0, 5], Gen.Int[0, 1000000], Gen.Double[1, 90], Gen.Int[0, 3]).Select((kind, id, mm, word) => (WallReading)(kind switch
    {
        0 => new TapHeard($"r{id}", mm * 40, 1500, new[] { "hollow", "solid", "high", "dull" }[word]),
        1 => new MagnetDrawn($"r{id}", 0, 1500, mm * 20, word),
        2 => new HoleFelt($"r{id}", mm * 40, 1500) { SolidAtMm = mm, Met = word == 0 ? null : "masonry" },
        3 => new HookedWire($"r{id}", mm * 40, 1500, mm),
        4 => new StiffWire($"r{id}", mm * 40, 1500, mm),
        _ => new HoleFelt($"r{id}", mm * 40, 1500) { Met = "void", RanToMm = mm },
    }));

    [Fact]
    public void Probabilities_sum_to_one_and_depths_are_finite() => AnyReading.List[0, 12].Sample(readings =>
    {
        var belief = WallModel.Infer(new("w", "wall", readings));
        Assert.Equal(1, belief.BuildUps.Sum(b => b.Probability), 1e-12);
        Assert.All(belief.BuildUps, b => Assert.True(double.IsFinite(b.Board.MeanMm + b.Void.MeanMm + b.Void.SdMm) && b.Board.SdMm >= 0));
        Assert.True(double.IsFinite(belief.LogEvidence));
    }, iter: 200);

    [Fact]
    public void The_order_of_readings_is_irrelevant() => AnyReading.List[2, 8].Sample(readings =>
    {
        var a = WallModel.Infer(new("w", "wall", readings));
        var b = WallModel.Infer(new("w", "wall", [.. readings.AsEnumerable().Reverse()]));
        if (readings.Select(r => r.Id).Distinct().Count() == readings.Count)
            Assert.Equal(a.BuildUps.Select(x => (x.BuildUp.Id, x.Probability)), b.BuildUps.Select(x => (x.BuildUp.Id, x.Probability)));
    }, iter: 100);

    [Fact]
    public void Every_row_names_its_source_and_its_layers_add_up()
    {
        Assert.All(BuildUps.All, b => Assert.NotEqual("", b.Source));
        Assert.All(BuildUps.All, b => Assert.Equal(b.FrontMm, (b.BoardMm * b.Boards) + b.SkimMm + b.InsulationMm, 0.011));
        Assert.All(RateTable.All, r => Assert.InRange(r.Value, r.Low, r.High));
        Assert.Equal(BuildUps.All.Count, BuildUps.All.Select(b => b.Id).Distinct().Count());
    }

    [Fact]
    public void A_second_tap_at_one_place_is_no_second_opinion()
    {
        WallEvidence one = new("w", "wall", [new TapHeard("a", 500, 1500, "high")]);
        var two = one with { Readings = [.. one.Readings, new TapHeard("b", 500, 1500, "high")] };
        Assert.Equal(WallModel.Infer(one).Family("dabs"), WallModel.Infer(two).Family("dabs"), 1e-12);
    }

    [Fact]
    public void Many_taps_never_make_certain_because_the_wall_may_tell_badly()
    {
        var belief = WallModel.Infer(new("w", "wall", [.. Enumerable.Range(0, 60).Select(i => new TapHeard($"t{i}", i * 300, 1500, i % 4 == 0 ? "solid" : "hollow"))]));
        Assert.InRange(belief.BestFamily.Probability, 0.3, 0.999);
    }

    [Fact]
    public void A_mis_read_hook_is_named_with_its_values()
    {
        var belief = WallModel.Infer(new("w", "wall", [new HookedWire("a", 500, 1500, 26), new HoleFelt("b", 510, 1500) { Met = "void", BoardBackMm = 13 }]));
        var found = Assert.Single(belief.Contradictions);
        Assert.Equal(("wire_against_hole", 26.0, 13.0), (found.What.Code, found.What.Values[0].Number, found.What.Values[1].Number));
        Assert.Equal(["a", "b"], found.Readings);
    }

    [Fact]
    public void Explain_gives_most_to_the_reading_that_decides()
    {
        WallEvidence e = new("w", "wall", [new TapHeard("tap", 500, 1500, "hollow"), new HoleFelt("hole", 500, 1500) { SolidAtMm = 28, Met = "masonry", Swarf = "red" }]);
        var first = WallModel.Explain(e)[0];
        Assert.Equal("hole", first.Reading);
        Assert.True(first.LogOdds > 1);
    }

    [Fact]
    public void One_wall_of_a_house_teaches_the_next_and_says_so()
    {
        WallEvidence known = new("a", "wall", [new HoleFelt("h", 5, 5) { SolidAtMm = 28, Met = "masonry", Swarf = "red" }, new HookedWire("w", 5, 5, 12.5)]) { OtherSide = "outside" };
        WallEvidence unknown = new("b", "wall", [new TapHeard("t", 5, 5, "high")]) { OtherSide = "outside" };
        var alone = WallModel.Infer(unknown);
        var together = HouseModel.Infer([known, unknown])[1];
        Assert.True(together.Family("dabs") > alone.Family("dabs"));
        Assert.Equal("house_moved", together.FromHouse!.Why.Code);
        Assert.Contains("a", together.FromHouse.Why.Values[^1].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_house_is_exact_against_all_ways_and_build_ups_written_out()
    {
        WallEvidence[] walls = [new("a", "ceiling", [new HookedWire("w", 5, 5, 12)]), new("b", "ceiling", [new TapHeard("t", 5, 5, "dull")]), new("c", "ceiling", [])];
        var rates = WallRates.Default;
        var rows = BuildUps.OfKind("ceiling");
        WallPosterior[] p = [.. walls.Select(w => new WallPosterior(w, rates))];
        double[] expected = new double[rows.Count];
        for (int way = 0; way < rows.Count; way++)
            for (int i = 0; i < rows.Count; i++)
                for (int j = 0; j < rows.Count; j++)
                    for (int k = 0; k < rows.Count; k++)
                        expected[j] += p[0].Prior[way] * Chance(rows, p[0].Prior, way, i, rates) * Chance(rows, p[0].Prior, way, j, rates)
                            * Chance(rows, p[0].Prior, way, k, rates) * p[0].Likelihood[i] * p[1].Likelihood[j] * p[2].Likelihood[k];
        var actual = HouseModel.Infer(walls)[1];
        for (int j = 0; j < rows.Count; j++) Assert.Equal(expected[j] / expected.Sum(), actual.BuildUps.First(b => b.BuildUp.Id == rows[j].Id).Probability, 1e-12);
    }

    private static double Chance(IReadOnlyList<BuildUp> rows, double[] prior, int way, int i, WallRates r)
    {
        double family = rows.Select((b, n) => b.Family == rows[i].Family ? prior[n] : 0).Sum();
        return (way == i ? r.HouseSame : 0) + (rows[way].Family == rows[i].Family ? r.HouseFamily * prior[i] / family : 0) + ((1 - r.HouseSame - r.HouseFamily) * prior[i]);
    }
}
