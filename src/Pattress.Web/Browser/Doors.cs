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
}
