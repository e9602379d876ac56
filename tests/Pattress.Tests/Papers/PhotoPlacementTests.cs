using CsCheck;
using Pattress.Jobs;
using Pattress.Papers.Drawings;
using Pattress.Papers.Elevations;

namespace Pattress.Tests.Papers;

public class PhotoPlacementTests
{
    // 1000 mm by 500 mm at 0.5 px a mm: 500 by 250 px.
    private static readonly Drawing Wall = new("w", "", new Rect(0, 0, 1000, 500), 0.5, []);

    // By hand: 100 px on the photo are 200 mm, which are 100 px on the drawing; the photo's (10, 20) is at (0, 500), its upper left corner.
    [Fact]
    public void A_level_photo_is_moved_and_not_turned()
    {
        var placed = PhotoPlacement.Of(Wall, new(10, 20, new Point(0, 500)), new(110, 20, new Point(200, 500)))!.Value;
        Assert.Equal(new PhotoPlacement(1, 0, -10, -20), placed);
    }

    [Fact]
    public void Both_points_fall_on_their_places() =>
        Gen.Select(Gen.Double[0, 1000].Array[4], Gen.Double[0, 500].Array[4]).Sample((x, y) =>
        {
            var (first, second) = (new PhotoMark(x[0], y[0], new Point(x[1], y[1])), new PhotoMark(x[2], y[2], new Point(x[3], y[3])));
            if (PhotoPlacement.Of(Wall, first, second) is not { } placed) return;
            foreach (var mark in (PhotoMark[])[first, second])
            {
                var on = placed.On(mark.XPx, mark.YPx);
                var back = Wall.ToMm(on.X, on.Y);
                Assert.Equal(mark.At.X, back.X, 6);
                Assert.Equal(mark.At.Y, back.Y, 6);
            }
        });

    [Fact]
    public void One_point_twice_places_nothing() =>
        Assert.Null(PhotoPlacement.Of(Wall, new(10, 20, new Point(0, 500)), new(10, 20, new Point(200, 500))));
}
