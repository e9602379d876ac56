using Pattress.Planning;

namespace Pattress.Jobs.Site;

/// <summary>
/// The holes of a job in the plan's order of work, one at a time: every thin hole first, then each bit at each stop. What is
/// done is read from the job itself, so that nothing is lost when the phone rings.
/// </summary>
/// <param name="Tasks">All, done or not, in order.</param>
/// <param name="ToDo">Those not yet done.</param>
/// <param name="HeldBack">Things not to be drilled yet, or not at all.</param>
public sealed record DrillList(IReadOnlyList<DrillTask> Tasks, IReadOnlyList<DrillTask> ToDo, IReadOnlyList<HeldBack> HeldBack)
{
    /// <summary>How far past the face the thin bit goes before one stops and feels, mm (common practice, no source).</summary>
    public const double PastFaceMm = 5;

    /// <summary>Holes nearer than this are one hole, mm (assumed).</summary>
    public const double SameHoleMm = 3;

    // What no drill may settle: a laboratory, a trade, or dry weather must.
    private static readonly string[] NotByDrill = ["remedy_trade", "remedy_sample", "remedy_dry"];

    public DrillTask? Next => ToDo.Count > 0 ? ToDo[0] : null;

    public static DrillList Of(Job job, PlanAnswer plan)
    {
        var found = All(plan).ToList();
        var tasks = found.Where(t => t.Aim == DrillAim.Feel)
            .Concat(found.Where(t => t.Aim == DrillAim.Widen).OrderBy(t => t.DiameterMm).ThenBy(t => t.Bit, StringComparer.Ordinal).ThenBy(t => t.StopMm)).ToList();
        return new(tasks, [.. tasks.Where(t => !IsDone(job, t) && !(t.Aim == DrillAim.Widen && Contradicted(job, plan, t)))], [.. plan.Items.SelectMany(i => Held(job, i))]);
    }

    private static IEnumerable<DrillTask> All(PlanAnswer plan) =>
        from item in plan.Items where item.Verdict != Verdict.NotHere
        from bracket in item.Brackets where bracket.Fixing is not null
        from hole in bracket.Holes where hole.Bit != "none"
        from task in ForHole(item, bracket, hole, plan.Walls.First(w => w.Id == item.Wall).Strips)
        select task;

    private static IEnumerable<DrillTask> ForHole(ItemAnswer item, BracketAnswer bracket, HoleAnswer hole, IReadOnlyList<CableStrip> strips)
    {
        double face = Expectation.FaceMm(bracket.Section);
        bool wide = hole.DiameterMm > OrderOfWork.ExploreMm;
        if (!MayFeel(item, hole, strips)) yield break;
        if (wide) yield return new(item.Id, bracket.Index, item.Wall, hole.At, DrillAim.Feel, "masonry", OrderOfWork.ExploreMm, Math.Min(hole.DepthMm, face + PastFaceMm), face, bracket.Fixing!, true);
        if (item.Verdict == Verdict.Ready)
            yield return new(item.Id, bracket.Index, item.Wall, hole.At, DrillAim.Widen, hole.Bit, hole.DiameterMm, hole.DepthMm, face, bracket.Fixing!, !wide);
    }

    /// <summary>A thin hole settles a doubt about the wall; it never settles a cable, a fibre or a damp board.</summary>
    private static bool MayFeel(ItemAnswer item, HoleAnswer hole, IReadOnlyList<CableStrip> strips) =>
        item.Verdict == Verdict.Ready
        || !item.Remedies.Any(r => NotByDrill.Contains(r.Code)) && CableStrips.Touching(strips, hole.At, hole.DiameterMm).All(s => s.Checked.Length > 0);

    private static IEnumerable<HeldBack> Held(Job job, ItemAnswer item)
    {
        if (item.Verdict != Verdict.Ready) yield return new(item.Id, item.Why);
        foreach (var (bracket, hole) in item.Brackets.SelectMany(b => b.Holes.Select(h => (b, h))))
        {
            if (Otherwise(job, item.Wall, bracket, hole.At) is { } met) yield return new(item.Id, new Reason("drill_met_otherwise", Said.Length(hole.At.X), Said.Length(hole.At.Y), Said.Name("met." + met), Said.Name("met." + Expectation.Of(bracket.Section)[0])));
            if (Drilled(job, item.Id, hole.At).Any(d => d.DiameterMm > hole.DiameterMm + 1))
                yield return new(item.Id, new Reason("drill_too_wide", Said.Length(hole.At.X), Said.Length(hole.DiameterMm)));
        }
    }

    private static bool Contradicted(Job job, PlanAnswer plan, DrillTask task) =>
        Otherwise(job, task.Wall, plan.Items.First(i => i.Id == task.Item).Brackets.First(b => b.Index == task.Bracket), task.At) is not null;

    /// <summary>What was met in this very hole, where the bracket's fixing was chosen for something else; else null. Such a hole is not widened.</summary>
    private static string? Otherwise(Job job, string wall, BracketAnswer bracket, Point at) =>
        bracket.Fixing is null ? null : Felt(job, wall, at).Select(r => r.Met!).FirstOrDefault(met => !Expectation.Of(bracket.Section).Contains(met));

    private static IEnumerable<Reading> Felt(Job job, string wall, Point at) =>
        job.Walls.First(w => w.Id == wall).Readings.Where(r => !r.Withdrawn && r is { Kind: "hole" or "probe", Met: not null, At: { } a } && Near(a, at));

    private static bool IsDone(Job job, DrillTask task) =>
        task.Aim == DrillAim.Widen ? Drilled(job, task.Item, task.At).Any(d => d.DiameterMm >= task.DiameterMm - 0.25)
        : Drilled(job, task.Item, task.At).Any() || Felt(job, task.Wall, task.At).Any();

    private static IEnumerable<DrilledHole> Drilled(Job job, string fixture, Point at) =>
        job.Done.Holes.Where(h => !h.Withdrawn && h.Fixture == fixture && Near(h.At, at));

    private static bool Near(Point a, Point b) => Math.Abs(a.X - b.X) <= SameHoleMm && Math.Abs(a.Y - b.Y) <= SameHoleMm;
}
