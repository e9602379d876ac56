using Pattress.Jobs;
using Pattress.Planning;

namespace Pattress.Tests.Planning;

/// <summary>Zones of BS 7671 522.6.202 (as described in electricians' public notes; CHECKS J-Z-1 to J-Z-4).</summary>
public class CableStripTests
{
    private static Wall Wall(double? thickness = null, string face = "this") => new()
    {
        Id = "w", WidthMm = 4000, HeightMm = 2400, ThicknessMm = thickness,
        Services = [new("socket", "socket", new(1500 - 73, 450 - 43, 146, 86), face)],
    };

    private static IEnumerable<string> At(Wall wall, double x, double y) => CableStrips.Touching(CableStrips.Of(wall), new(x, y), 0).Select(s => s.Id);

    [Theory]
    [InlineData(2000, 2400 - 149, "ceiling")]
    [InlineData(2000, 2400 - 151, null)]
    [InlineData(149, 1200, "corner_left")]
    [InlineData(160, 1200, null)]
    [InlineData(1520, 1800, "socket_vertical")]
    [InlineData(900, 470, "socket_horizontal")]
    [InlineData(1600, 1000, null)]
    public void A_hole_is_in_the_strip_or_not(double x, double y, string? strip) =>
        Assert.Equal(strip is null ? [] : [strip], At(Wall(), x, y));

    [Theory]
    [InlineData(100.0, true)]
    [InlineData(101.0, false)]
    [InlineData(null, true)]
    public void The_other_face_counts_on_a_thin_wall_and_where_nobody_measured(double? thickness, bool counts) =>
        Assert.Equal(counts, At(Wall(thickness, "other"), 1520, 1800).Any());

    [Fact]
    public void A_wide_hole_touches_a_strip_that_its_middle_misses() =>
        Assert.NotEmpty(CableStrips.Touching(CableStrips.Of(Wall()), new(160, 1200), 25));
}
