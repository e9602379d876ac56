using Pattress.Actions;
using Pattress.Jobs;
using Pattress.Planning.Views;
using Pattress.Supports;

namespace Pattress.Planning.Layout;

/// <summary>What is known along a wall for brackets in a line: where supports are, what stands in the way, what is a risk.</summary>
public sealed class LineOfWall(WallView wall)
{
    /// <summary>What a place in an unchecked cable strip or pipe band is worth less (assumed).</summary>
    public const double StripCost = 0.2;

    /// <summary>Most places that the joint chance is worked out for.</summary>
    public const int MostJoint = 8;

    private readonly LineScan _scan = LineScans.Whole(wall.Wall, wall.Rates);
    private readonly double _studs = wall.Answer.BuildUps.Where(b => HasStuds(b.BuildUp)).Sum(b => b.Probability);
    private SupportBelief? _belief;

    private SupportBelief Belief => _belief ??= SupportModel.Infer(_scan);

    /// <summary>Chance that the bracket meets a support well inside its edges with one of its columns of holes.</summary>
    public double Meets(BracketPlate plate, Point at) => Math.Min(1, _studs * plate.Holes.Max(h => Belief.UsableAt(at.X + h.X, at.Y + h.Y)) / Share);

    /// <summary>Chance that a thin hole of the bracket meets a support, edge or not.</summary>
    public double Hits(BracketPlate plate, Point at) => Math.Min(1, _studs * plate.Holes.Max(h => Belief.HitAt(at.X + h.X, at.Y + h.Y)) / Share);

    /// <summary>Chance that all brackets meet supports, inferred jointly; null for more than can be worked out at once.</summary>
    public double? AllMeet(BracketPlate plate, IReadOnlyList<double> xs, double y)
    {
        if (xs.Count > MostJoint) return null;
        double all = SupportModel.AllHit(_scan, [.. xs.Select(x => x + Column(plate, x))]);
        // Joists that run along the brackets' line: all of them meet one, or none does.
        if (Belief.OtherWay is { } other) all += Belief.ParallelProbability * plate.Holes.Max(h => other.HitAt(y + h.Y));
        return Math.Min(1, _studs * all / Share);
    }

    /// <summary>The column of holes that is likeliest to meet.</summary>
    private double Column(BracketPlate plate, double x) => plate.Holes.Select(h => h.X).OrderByDescending(dx => Belief.UsableAt(x + dx)).ThenBy(Math.Abs).First();

    // The line's own doubt between studs and dabs is left to the wall's build-up.
    private double Share => Math.Max(0.02, 1 - Belief.DabProbability);

    /// <summary>No bracket may stand there: off the wall, in an opening, on a fitting, or at a board joint.</summary>
    public bool Blocked(BracketPlate plate, Point at) => plate.Holes.Select(h => new Point(at.X + h.X, at.Y + h.Y)).Any(Hindered);

    /// <summary>A hole would lie in a strip that nobody has checked.</summary>
    public bool Risky(BracketPlate plate, Point at) => plate.Holes.Any(h => CableStrips.Touching(wall.Strips, new(at.X + h.X, at.Y + h.Y), 0).Any(s => s.Checked.Length == 0));

    private bool Hindered(Point p) => p.X < 0 || p.Y < 0 || p.X > wall.Wall.WidthMm || p.Y > wall.Wall.HeightMm
        || wall.Wall.Openings.Any(o => o.Area.Contains(p)) || wall.Wall.Services.Any(s => s.Face == "this" && s.Area.Contains(p))
        || wall.Wall.Zones.Any(z => z.Kind == "board_joint" && z.Area.Contains(p));

    private static bool HasStuds(string buildUp) => Walls.BuildUps.Find(buildUp)?.Support is "timber_stud" or "steel_stud" or "joist" or "batten";
}
