using System.Diagnostics;
using Pattress.Actions.Beams;

namespace Pattress.Bench;

/// <summary>Contact solve, general-purpose BFGS and rail in one run, by many short batches: the median, and the lower quartile, which a busy machine hardly moves.</summary>
internal static class StaticsTiming
{
    private const int Batches = 401;

    private static readonly TimeSpan Warm = TimeSpan.FromSeconds(1.5);

    public static void Run()
    {
        var contact = new ContactBench();
        var beam = new BeamBench();
        double newton = Print("contact solve", 16 * 20, () => { double s = 0; for (int i = 0; i < 20; i++) s += contact.Newton(); return s; }, 1);
        long before = GC.GetAllocatedBytesForCurrentThread();
        contact.Newton();
        long used = GC.GetAllocatedBytesForCurrentThread() - before;
        Console.WriteLine(FormattableString.Invariant($"{used} bytes in 16 solves; {contact.Evaluations():F1} evaluations a solve"));
        Print("BFGS, cold, to the promised residual", 16, contact.Bfgs, newton);
        Print("BFGS, from the glued plate, to 1e-8", 16, contact.Bfgs_from_the_glued_plate, newton);
        Console.WriteLine($"BFGS cold gave up on {contact.GivenUp} of its solves");
        Print("BFGS, cold, in N and mm", 16, contact.Bfgs_in_newtons_and_millimetres, newton);
        int before16 = contact.GivenUpUnscaled;
        contact.Bfgs_in_newtons_and_millimetres();
        Console.WriteLine(FormattableString.Invariant($"in N and mm it gave up on {contact.GivenUpUnscaled - before16} of 16 loads; left out of balance at most {contact.LeftUnscaled:e1} of the load"));
        Print("rail of 12: standing", 1, () => beam.Standing(), newton);
        Print("rail of 12: all envelopes of reactions", 1, () => beam.All_envelopes(), newton);
        Print("rail of 12: moment envelope", 1, () => beam.Moment_envelope(), newton);
    }

    private static double Print(string what, int solves, Func<double> batch, double against)
    {
        var times = new double[Batches];
        double sum = 0;
        // Warm until the just-in-time compiler has surely done its best, which it does beside us and late on a busy machine.
        for (long start = Stopwatch.GetTimestamp(); Stopwatch.GetElapsedTime(start) < Warm;) sum += batch();
        for (int i = 0; i < Batches; i++)
        {
            long start = Stopwatch.GetTimestamp();
            sum += batch();
            times[i] = Stopwatch.GetElapsedTime(start).TotalMicroseconds / solves;
        }
        Array.Sort(times);
        Console.WriteLine(FormattableString.Invariant($"{what}: median {times[Batches / 2]:F3} us, lower quartile {times[Batches / 4]:F3} us, {times[Batches / 4] / against:F0} times a contact solve ({(double.IsNaN(sum) ? "NaN" : "ok")})"));
        return times[Batches / 4];
    }
}
