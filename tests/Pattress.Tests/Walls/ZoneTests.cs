using Pattress.Walls;

namespace Pattress.Tests.Walls;

public class ZoneTests
{
    private static readonly WallOpening Window = new("win", 1000, 900, 1200, 1200);

    private static ZonedWall Infer(params WallReading[] readings) => WallModel.InferZones(new("w", "wall", readings) { Openings = [Window], OtherSide = "outside" });

    private static readonly WallReading[] DabWall = [new HoleFelt("d1", 300, 1200) { SolidAtMm = 29, Met = "masonry", Swarf = "red" }];

    [Fact] // common practice, no source: bright swarf and a bit that stops dead over an opening is a hollow steel lintel
    public void Bright_swarf_over_a_window_is_a_steel_lintel_and_leaves_the_wall_alone()
    {
        var zoned = Infer([.. DabWall, new HoleFelt("l", 1600, 2150) { SolidAtMm = 26, Met = "metal", Swarf = "bright" }]);
        Assert.Equal("lintel_steel", zoned.Zones[0].Belief.BestFamily.Family);
        Assert.Equal("dabs", zoned.Wall.BestFamily.Family);
    }

    [Fact] // common practice, no source: in a stud wall a header over doubled studs
    public void Over_an_opening_in_a_stud_wall_a_header_is_expected()
    {
        var zoned = Infer(new HoleFelt("a", 300, 1200) { Met = "void" }, new HookedWire("b", 300, 1200, 12.5), new StiffWire("c", 300, 1200, 89));
        Assert.Equal("timber_header", zoned.Zones[0].Belief.BestFamily.Family);
    }

    [Fact] // common practice, no source: 65 to 225 high, bearing 100 to 150
    public void A_lintel_is_65_to_225_high_and_bears_100_to_150()
    {
        var zone = Infer(DabWall).Zones[0];
        Assert.InRange(zone.HeightMm.MeanMm, 65, 225);
        Assert.InRange(zone.BearingMm.MeanMm, 100, 150);
        Assert.True(zone.HeightMm.SdMm > 10);
    }

    [Fact]
    public void A_hard_hole_high_over_the_window_makes_the_lintel_higher()
    {
        var low = Infer(DabWall).Zones[0].HeightMm.MeanMm;
        var zone = Infer([.. DabWall, new HoleFelt("l", 1600, 2300) { SolidAtMm = 26, Met = "metal", Swarf = "bright" }]).Zones[0];
        Assert.True(zone.HeightMm.MeanMm > low + 15);
    }

    [Fact]
    public void Probabilities_of_every_zone_sum_to_one()
    {
        var zoned = WallModel.InferZones(new("w", "wall", DabWall) { Openings = [Window], Parts = [new("box", "boxing", 0, 0, 200, 2400), new("ch", "chimney_breast", 2500, 0, 900, 2400)] });
        Assert.Equal(3, zoned.Zones.Count);
        Assert.All(zoned.Zones, z => Assert.Equal(1, z.Belief.BuildUps.Sum(b => b.Probability), 1e-9));
        Assert.Equal(1, zoned.Wall.BuildUps.Sum(b => b.Probability), 1e-9);
    }
}
