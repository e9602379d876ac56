using Pattress.Actions;
using Pattress.Planning.Repairs;

namespace Pattress.Jobs.Repairs;

/// <summary>The whole thing a little higher or lower: it stays level, and finds the same studs.</summary>
internal static class Shifted
{
    /// <summary>How far up or down, mm, and from a hole's edge to where the face is sound (assumed).</summary>
    private static readonly double[] Steps = [40, 60, 80, 100, 120, 150];

    private const double SoundMm = 13;

    private const int MostTried = 4;

    /// <summary>Both as an answer lists them.</summary>
    public static Assumption Tried { get; } = new("assume_shifts", [Said.Length(Steps[0]), Said.Length(Steps[^1]), Said.Count(MostTried)], "assumed");

    public static Assumption Sound { get; } = new("assume_sound", [Said.Length(SoundMm)], "assumed");

    /// <summary>The first height, nearest first, where it is not refused; none on a ceiling.</summary>
    public static IEnumerable<RepairAnswer> Of(Job job, ItemAnswer now, int bracket, Remains remains, PlanData data)
    {
        if (job.Walls.FirstOrDefault(w => w.Id == now.Wall) is not { Kind: "wall" } wall) yield break;
        foreach (double off in Steps.SelectMany(s => new[] { s, -s }).Where(o => OnWall(now, o, wall.HeightMm) && IsClear(now, bracket, o, remains)).Take(MostTried))
        {
            var again = Planner.Plan(With(job, now, bracket, off, remains), data).Items.First(i => i.Id == now.Id);
            if (again.Verdict == Verdict.NotHere) continue;
            yield return Answer(job, again, bracket, off, data);
            yield break;
        }
    }

    /// <summary>The job with the thing and all its brackets moved up by so much (mm), and every hole of before entered as an old one.</summary>
    public static Job With(Job job, ItemAnswer now, int bracket, double off, Remains remains, string id = "came-away") => job with
    {
        Fixtures = [.. job.Fixtures.Select(f => f.Id == now.Id ? f with { At = f.At with { Y = f.At.Y + off }, Brackets = [.. now.Brackets.Select(b => b.At with { Y = b.At.Y + off })] } : f)],
        Walls = [.. job.Walls.Select(w => w.Id == now.Wall ? w with { OldHoles = [.. w.OldHoles, new OldHole(id, now.Brackets[bracket].At, remains.LostMm), .. Left(now, id)] } : w)],
    };

    private static bool OnWall(ItemAnswer now, double off, double height) => now.Brackets.All(b => b.At.Y + off > 0 && b.At.Y + off < height);

    private static bool IsClear(ItemAnswer now, int bracket, double off, Remains remains)
    {
        var left = Left(now, "").Append(new("", now.Brackets[bracket].At, remains.LostMm)).ToList();
        return now.Brackets.SelectMany(b => b.Holes).All(h => left.All(o => Math.Sqrt(Square(h.At.X - o.At.X) + Square(h.At.Y + off - o.At.Y)) >= (o.DiameterMm / 2) + SoundMm));
    }

    private static double Square(double x) => x * x;

    private static IEnumerable<OldHole> Left(ItemAnswer now, string id) =>
        now.Brackets.SelectMany(b => b.Holes).Where(h => h.DiameterMm > 0).Select((h, i) => new OldHole($"{id}-{i + 1}", h.At, h.DiameterMm));

    private static RepairAnswer Answer(Job job, ItemAnswer again, int bracket, double off, PlanData data)
    {
        var rule = RepairWay.Of("shift");
        var sizes = again.Brackets.Select(b => (b.Count, Size: data.Catalogue.Find(b.Fixing!)!)).ToList();
        double minutes = (again.Brackets.Count * rule.Minutes) + sizes.Sum(s => s.Count * s.Size.Minutes);
        decimal materials = (again.Brackets.Count * rule.Price) + sizes.Sum(s => s.Count * s.Size.Price);
        return new("shift", sizes[bracket].Size.Id, again.Brackets[bracket].At, again.Verdict, minutes, rule.WaitHours, PuttingRight.Priced(job, materials, minutes),
            new(off > 0 ? "repair_shift_up" : "repair_shift_down", Said.Length(Math.Abs(off)), Said.Name(sizes[bracket].Size.Id)));
    }
}
