using Pattress.Actions;
using Pattress.Fixings;
using Pattress.Jobs;
using Pattress.Supports;
using Pattress.Walls;

namespace Pattress.Planning.Views;

/// <summary>A wall as believed: its build-ups, zones and supports.</summary>
public sealed class BuiltView : WallView
{
    /// <summary>Ideas below this are not worth judging; their share counts against every choice.</summary>
    private const double LeastIdea = 0.005;

    private const int MostIdeas = 14;

    /// <summary>Holes this close in x meet the same support.</summary>
    private const double ColumnMm = 8;

    private readonly HouseBelief _house;
    private readonly SupportBelief _line;

    internal BuiltView(OneWall wall, HouseBelief house) : base(wall.Wall)
    {
        _house = house;
        (_line, Rates) = (wall.Line, wall.Rates);
        Answer = WallAnswers.Of(this, house, _line);
    }

    public override WallAnswer Answer { get; }

    public override LineRates Rates { get; }

    public override IReadOnlyList<Idea> Ideas(BracketActions bracket)
    {
        var holes = bracket.Plate.Holes.Select(h => new Point(bracket.At.X + h.X, bracket.At.Y + h.Y)).ToArray();
        var hit = holes.Select(HitAt).ToArray();
        var lines = LinesThatMeet(holes);
        // No idea of a build-up is likelier than the build-up.
        var ideas = _house.At(Wall.Id, bracket.At).Where(b => b.Probability >= LeastIdea).SelectMany(b => Ideas(b, holes, hit, lines));
        return [.. ideas.Where(i => i.Probability >= LeastIdea).OrderByDescending(i => i.Probability).ThenBy(i => i.First.BuildUp, StringComparer.Ordinal).Take(MostIdeas)];
    }

    public override IReadOnlyList<(double X, double Probability)> BetterPlaces(double x) =>
        [.. _line.Supports.Where(s => s.Probability >= 0.5 && Math.Abs(s.CentreMm - x) > ColumnMm)
            .OrderBy(s => Math.Abs(s.CentreMm - x)).Take(3).Select(s => (Math.Round(s.CentreMm), Math.Min(1, _line.UsableAt(Math.Round(s.CentreMm)) / Studs)))];

    public override CheckToDo Settle(BracketPlan bracket, IReadOnlyList<string> items) => bracket.Answer.Why.Code == "check_support"
        ? SettleSupport(bracket.Actions, items) ?? Probe(bracket, items)
        : Settling.Best(Wall, _house.BelievedAt(Wall.Id, bracket.Actions.At), bracket, items) ?? Settling.Look(Wall, bracket, items);

    private CheckToDo? SettleSupport(BracketActions bracket, IReadOnlyList<string> items)
    {
        double x = bracket.At.X;
        var zone = new Zone(Math.Max(0, x - ZoneMm), Math.Min(Wall.WidthMm, x + ZoneMm));
        if (SupportModel.Infer(LineScans.Of(Wall, [zone], Rates)).Next is not { } next || next.After < next.Before + Settling.LeastGain) return null;
        return new(next.Kind, Wall.Id, new(Math.Round(next.AtMm), bracket.At.Y), items, next.Why, next.Minutes, next.Before, next.After);
    }

    /// <summary>A thin hole where the bracket goes: how sure one is now, and how sure if it meets the support.</summary>
    private CheckToDo Probe(BracketPlan bracket, IReadOnlyList<string> items)
    {
        double x = bracket.Actions.At.X + bracket.Actions.Plate.Holes[bracket.Picked!.Best!.Columns[0]].X, sure = bracket.Picked.Sure;
        var at = bracket.Actions.At with { X = x };
        var met = SupportModel.Infer(LineScans.Probed(Wall, at, Rates));
        double then = Math.Min(1, met.UsableAt(at.X, at.Y) / Math.Max(0.02, 1 - met.DabProbability));
        return new("probe", Wall.Id, bracket.Actions.At with { X = Math.Round(x) }, items, new Reason("check_probe", Said.Length(x), Said.Percent(sure), Said.Percent(then)), CheckMinutes.Of("probe"), sure, then);
    }

    private const double ZoneMm = 25;

    /// <summary>Spots do not depend on how likely a build-up is: brackets on the same part of a wall share them.</summary>
    private readonly Dictionary<(BuildUp BuildUp, Fixings.Spread Front, Fixings.Spread Void, Met Met), IReadOnlyList<Spot>> _spots = new(SameBuildUp.Instance);

    private enum Met { Between, Support, Dab }

    private IReadOnlyList<Spot> SpotsOf(Believed b, Met met)
    {
        var key = (b.BuildUp, b.Front, b.Void, met);
        if (!_spots.TryGetValue(key, out var spots)) _spots[key] = spots = met switch
        {
            Met.Support => [Spots.Support(b)],
            Met.Dab => Spots.Dab(b),
            _ => Spots.Between(b, Fixings.Spread.None),
        };
        return spots;
    }

    /// <summary>Build-ups are rows of one table: the same row is the same object.</summary>
    private sealed class SameBuildUp : IEqualityComparer<(BuildUp BuildUp, Fixings.Spread Front, Fixings.Spread Void, Met Met)>
    {
        public static SameBuildUp Instance { get; } = new();

        public bool Equals((BuildUp BuildUp, Fixings.Spread Front, Fixings.Spread Void, Met Met) a, (BuildUp BuildUp, Fixings.Spread Front, Fixings.Spread Void, Met Met) b) =>
            ReferenceEquals(a.BuildUp, b.BuildUp) && a.Front == b.Front && a.Void == b.Void && a.Met == b.Met;

        public int GetHashCode((BuildUp BuildUp, Fixings.Spread Front, Fixings.Spread Void, Met Met) k) =>
            HashCode.Combine(System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(k.BuildUp), k.Front.Mean, k.Void.Mean, k.Met);
    }

    private IEnumerable<Idea> Ideas(Believed b, Point[] holes, double[] hit, IReadOnlyList<(int[] Holes, double Usable)> lines)
    {
        int[] all = [.. Enumerable.Range(0, holes.Length)];
        var none = new double[holes.Length];
        switch (b.BuildUp.Support)
        {
            case "timber_stud" or "steel_stud" or "joist" or "batten":
                double most = hit.Max();
                foreach (var line in lines) yield return new(SpotsOf(b, Met.Support), b.Probability * line.Usable, true, line.Holes, hit);
                yield return new(SpotsOf(b, Met.Between), b.Probability * (1 - most), false, all, hit);
                break;
            case "dab" when b.BuildUp.Family != "laminate":
                yield return new(SpotsOf(b, Met.Between), b.Probability * (1 - b.BuildUp.SupportShare), false, all, none);
                yield return new(SpotsOf(b, Met.Dab), b.Probability * b.BuildUp.SupportShare, false, all, none);
                break;
            default:
                yield return new(SpotsOf(b, Met.Between), b.Probability, false, all, none);
                break;
        }
    }

    /// <summary>
    /// The holes in a line that are likeliest to meet a support well inside its edges: a column of them, and on a ceiling a row for the
    /// case that its joists run the other way. Joists run one way or the other, so the two exclude each other.
    /// </summary>
    private IReadOnlyList<(int[] Holes, double Usable)> LinesThatMeet(Point[] holes) => _line.OtherWay is not { } other
        ? [Best(holes, p => p.X, UsableAt)]
        : [Best(holes, p => p.X, p => _line.UsableAt(p.X)), Best(holes, p => p.Y, p => _line.ParallelProbability * other.UsableAt(p.Y))];

    private static (int[] Holes, double Usable) Best(Point[] holes, Func<Point, double> along, Func<Point, double> usable)
    {
        (int[] Holes, double Usable) best = ([0], -1);
        foreach (int[] line in Columns(holes, along))
        {
            double least = line.Min(j => usable(holes[j]));
            if (least > best.Usable + 1e-9) best = (line, least);
        }
        return best;
    }

    private static IEnumerable<int[]> Columns(Point[] holes, Func<Point, double> along) =>
        holes.Select(h => Enumerable.Range(0, holes.Length).Where(j => Math.Abs(along(holes[j]) - along(h)) <= ColumnMm).ToArray());

    /// <summary>The line model's own doubt between studs and dabs is left to the wall's build-up.</summary>
    private double HitAt(Point p) => Math.Min(1, _line.HitAt(p.X, p.Y) / Studs);

    private double UsableAt(Point p) => Math.Min(1, _line.UsableAt(p.X, p.Y) / Studs);

    private double Studs => Math.Max(0.02, 1 - _line.DabProbability);
}
