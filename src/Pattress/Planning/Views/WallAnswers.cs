using Pattress.Jobs;
using Pattress.Supports;

namespace Pattress.Planning.Views;

/// <summary>Writes down what is believed of a wall.</summary>
internal static class WallAnswers
{
    /// <summary>Build-ups less likely than this are not listed.</summary>
    private const double Least = 0.005;

    public static WallAnswer Of(WallView view, HouseBelief house, SupportBelief line)
    {
        var wall = view.Wall;
        var believed = house.Whole(wall.Id);
        double studs = believed.Where(b => b.BuildUp.Support is not ("none" or "dab")).Sum(b => b.Probability);
        var (front, frontSd) = Mixed(believed, b => b.Front);
        var (room, roomSd) = Mixed(believed, b => b.Void);
        return new(
            wall.Id, wall.Name, wall.Kind, wall.WidthMm, wall.HeightMm, Chances(believed), front, frontSd, room, roomSd,
            [.. line.Supports.Select(s => new SupportBand(s.CentreMm, s.SdMm, s.WidthMm, s.Probability * studs))],
            [.. line.Pitches.Select(p => new PitchChance(p.Mm, p.Probability))],
            [.. house.Zones(wall.Id).Select(z => new ZoneAnswer(z.Id, z.Kind, z.Area, Chances(z.Believed)))],
            view.Strips, house.Settle(wall),
            [.. Further(wall), .. house.Notes(wall.Id), .. line.Contradictions.Select(c => c.What)]);
    }

    private static IEnumerable<Reason> Further(Wall wall) => wall.BuiltAs == "usual" ? [] : [FurtherWalls.FindOut(wall.BuiltAs)];

    private static IReadOnlyList<BuildUpChance> Chances(IReadOnlyList<Believed> believed) =>
        [.. believed.Where(b => b.Probability >= Least).OrderByDescending(b => b.Probability).ThenBy(b => b.BuildUp.Id, StringComparer.Ordinal)
            .Select(b => new BuildUpChance(b.BuildUp.Id, b.Probability))];

    /// <summary>Mean and standard deviation over all build-ups.</summary>
    private static (double Mean, double Sd) Mixed(IReadOnlyList<Believed> believed, Func<Believed, Fixings.Spread> of)
    {
        double mean = believed.Sum(b => b.Probability * of(b).Mean);
        double second = believed.Sum(b => b.Probability * (of(b).Sd * of(b).Sd + (of(b).Mean - mean) * (of(b).Mean - mean)));
        return (mean, Math.Sqrt(second));
    }
}
