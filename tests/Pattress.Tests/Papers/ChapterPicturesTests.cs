using Pattress.Jobs;
using Pattress.Jobs.Text;
using Pattress.Jobs.WallFile;
using Pattress.Papers.Drawings;
using Pattress.Papers.Elevations;
using Pattress.Tests.Published;

namespace Pattress.Tests.Papers;

/// <summary>The pictures of docs/reading-a-wall.md: the landing of the samples as its readings come in, drawn from its plan.</summary>
public class ChapterPicturesTests
{
    public static TheoryData<string, int> Pictures => new() { { "landing-taps.svg", 4 }, { "landing-sweep.svg", 5 }, { "landing-probe.svg", 6 } };

    [Theory]
    [MemberData(nameof(Pictures))]
    public void A_picture_is_what_the_wall_looks_like_then(string file, int readings) =>
        Assert.Equal(Picture(readings), File.ReadAllText(Place(file)).ReplaceLineEndings("\n"));

    /// <summary>Draws them anew; on demand, since it changes the working tree.</summary>
    [Theory(Explicit = true)]
    [MemberData(nameof(Pictures))]
    public void Write(string file, int readings) => File.WriteAllText(Place(file), Picture(readings));

    private static string Place(string file) => Path.Combine(ValidationPage.Root(), "docs", "pictures", file);

    private static string Picture(int readings)
    {
        var house = WallDocument.Read(File.ReadAllText(Path.Combine(ValidationPage.Root(), "samples", "landing.wall.json"))).Value!.House;
        var wall = house.Walls[0] with { Readings = [.. house.Walls[0].Readings.Take(readings)] };
        var plan = Planner.Plan(house with { Walls = [wall] }, PlanData.Embedded);
        var drawing = ElevationDrawing.Of(new(wall, plan.Walls[0], [], Datum.Corner), new(720, 13), r => Texts.Sentence(r, house.Settings));
        return Svg.Alone(drawing).ReplaceLineEndings("\n");
    }
}
