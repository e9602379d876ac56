using System.Runtime.InteropServices.JavaScript;
using Pattress.Jobs;
using Pattress.Web.Desks;

namespace Pattress.Web.Browser;

/// <summary>What the page lets scripts ask: the plan as the command line prints it, and how long it took.</summary>
internal static partial class Doors
{
    public static Desk? Desk { get; set; }

    /// <summary>The plan on the desk, as JSON.</summary>
    [JSExport]
    internal static string PlanOnDesk() => Desk is { } desk ? PlanJson.Write(desk.Plan, desk.Job.Settings) : "";

    /// <summary>The job on the desk, as its document.</summary>
    [JSExport]
    internal static string JobOnDesk() => Desk is { } desk ? JobWriter.Write(desk.Job) : "";

    /// <summary>What the code of the job on the desk says behind the #.</summary>
    [JSExport]
    internal static string CodeOnDesk() => Desk is { } desk ? JobCodes.Packed(JobWriter.Write(desk.Job)) : "";

    /// <summary>Milliseconds that planning the job on the desk takes.</summary>
    [JSExport]
    internal static double PlanTime()
    {
        if (Desk is null) return double.NaN;
        var clock = TimeProvider.System;
        long start = clock.GetTimestamp();
        Planner.Plan(Desk.Job, PlanData.Embedded);
        return clock.GetElapsedTime(start).TotalMilliseconds;
    }

    /// <summary>Milliseconds that the plan takes after a thing was moved a little; NaN past the last thing.</summary>
    [JSExport]
    internal static double TimeAfterMoving(int thing) => Desk?.Job is { } job && thing < job.Fixtures.Count
        ? After(job, job.With(job.Fixtures[thing] with { At = new(job.Fixtures[thing].At.X + 1, job.Fixtures[thing].At.Y) }))
        : double.NaN;

    /// <summary>Milliseconds that the plan takes after a reading was added to a wall; NaN past the last wall.</summary>
    [JSExport]
    internal static double TimeAfterReading(int wall) => Desk?.Job is { } job && wall < job.Walls.Count
        ? After(job, job.With(job.Walls[wall].Add(new Reading { Id = "measured", Kind = "tap", At = new(job.Walls[wall].WidthMm / 2, 300), Sound = "hollow" })))
        : double.NaN;

    /// <summary>Milliseconds from a wall with 60 readings to all that its page says of it: what it is, its supports, the next check.</summary>
    [JSExport]
    internal static double WallTime()
    {
        var taps = Enumerable.Range(0, 56).Select(i => new Reading { Id = $"t{i}", Kind = "tap", At = new(60 + (i * 74), 1400), Sound = i % 8 == 1 ? "solid" : "hollow" });
        var wall = new Wall
        {
            Id = "measured", Name = "", Kind = "wall", WidthMm = 4200, HeightMm = 2400,
            Readings =
            [
                .. taps, new Reading { Id = "m", Kind = "magnet", From = new(500, 1400), To = new(900, 1400), Hits = [new(728, 1400)] },
                new Reading { Id = "h", Kind = "hole", At = new(300, 1400), Met = "void", DepthMm = 70, Swarf = "white" },
                new Reading { Id = "w", Kind = "hooked_wire", At = new(300, 1400), ThicknessMm = 14.2 }, new Reading { Id = "v", Kind = "stiff_wire", At = new(300, 1400), VoidMm = 74 },
            ],
        };
        var job = new Job { Settings = Desk?.Job.Settings ?? new(), Walls = [wall] };
        var clock = TimeProvider.System;
        long start = clock.GetTimestamp();
        Jobs.WallFile.WallReport.Of(job, [wall.Id], hidden: true, explain: false);
        return clock.GetElapsedTime(start).TotalMilliseconds;
    }

    private static double After(Job before, Job after)
    {
        var clock = TimeProvider.System;
        var planner = new Replanner(PlanData.Embedded);
        planner.Plan(before);
        long start = clock.GetTimestamp();
        planner.Plan(after);
        return clock.GetElapsedTime(start).TotalMilliseconds;
    }

    /// <summary>The cheapest shopping for a job document, solved in the worker, as JSON.</summary>
    [JSExport]
    internal static async Task<string> BuyFor(string document) =>
        JobReader.Read(document).Value is { } job ? Jobs.Buying.BuyJson.Write(await Jobs.Buying.JobBuyer.Buy(job, PlanData.Embedded, new WorkerSolver()), job.Settings) : "";

    /// <summary>How many brackets were bought for and how long each solve took in the worker, as a sentence.</summary>
    [JSExport]
    internal static async Task<string> BuyTimes(string document)
    {
        if (JobReader.Read(document).Value is not { } job) return "";
        var timed = new TimedSolver(new WorkerSolver());
        var answer = await Jobs.Buying.JobBuyer.Buy(job, PlanData.Embedded, timed);
        return FormattableString.Invariant($"{answer.Classes.Sum(c => c.Brackets)} brackets in {answer.Classes.Count} classes: {string.Join(" and ", timed.Milliseconds.Select(t => t.ToString("0", System.Globalization.CultureInfo.InvariantCulture)))} ms");
    }

    /// <summary>A solver with a clock beside it.</summary>
    private sealed class TimedSolver(Planning.Programs.IProgramSolver inner) : Planning.Programs.IProgramSolver
    {
        public List<double> Milliseconds { get; } = [];

        public string Name => inner.Name;

        public async Task<Planning.Programs.ProgramAnswer> Solve(Planning.Programs.IntegerProgram program, double seconds, CancellationToken cancel)
        {
            var clock = TimeProvider.System;
            long start = clock.GetTimestamp();
            var answer = await inner.Solve(program, seconds, cancel);
            Milliseconds.Add(clock.GetElapsedTime(start).TotalMilliseconds);
            return answer;
        }
    }
}
