using System.Diagnostics;
using System.Globalization;
using Pattress.Jobs;
using Pattress.Jobs.Text;

namespace Pattress.Tests.Faults;

/// <summary>
/// Mutated small jobs give an answer or a clean refusal. As many as fit in two minutes of the build machine, in ten seconds
/// elsewhere, and at least 5,000; PATTRESS_FUZZ sets
/// a number to run instead. The seed is fixed, so that a mutant is known by its number.
/// </summary>
public class FuzzTests(ITestOutputHelper output)
{
    private const int Seed = 20_260_711, Least = 5_000;
    private static readonly TimeSpan Budget = TimeSpan.FromSeconds(Environment.GetEnvironmentVariable("CI") == "true" ? 120 : 10), Hang = TimeSpan.FromSeconds(20);

    [Fact]
    public void Mutated_jobs_give_an_answer_or_a_clean_refusal()
    {
        int wanted = int.TryParse(Environment.GetEnvironmentVariable("PATTRESS_FUZZ"), NumberStyles.None, CultureInfo.InvariantCulture, out int n) ? n : 0;
        var mutator = new Mutator(Seed);
        var clock = Stopwatch.StartNew();
        int done = 0, answered = 0;
        var faults = new Dictionary<string, string>(StringComparer.Ordinal);
        for (; wanted > 0 ? done < wanted : done < Least || clock.Elapsed < Budget; done++)
        {
            if (Try(done, mutator.Next(), faults)) answered++;
        }
        output.WriteLine($"{done} mutants in {clock.Elapsed.TotalSeconds:0} s, {answered} reached the plan");
        Assert.True(faults.Count == 0, string.Join("\n\n", faults.Values));
        Assert.True(answered * 2 >= done, $"only {answered} of {done} mutants reached the plan");
        Assert.True(answered < done, "no mutant was refused");
    }

    // Each kind of fault once, known by the place where it was thrown.
    private static bool Try(int number, string mutant, Dictionary<string, string> faults)
    {
        var clock = Stopwatch.StartNew();
        try
        {
            bool answered = Answers(mutant);
            Assert.True(clock.Elapsed < Hang, "took too long");
            return answered;
        }
        catch (Exception fault) when (fault is not OutOfMemoryException)
        {
            faults.TryAdd(fault.StackTrace?.Split('\n')[0] ?? fault.Message, $"mutant {number}: {fault}\n{mutant}");
            return true;
        }
    }

    private static bool Answers(string mutant)
    {
        var read = JobReader.Read(mutant);
        if (!read.Ok)
        {
            Assert.All(read.Problems, p => Assert.True(Texts.Has(p.Code) && p.Path.StartsWith('$') && p.Allowed.Length > 0, p.ToString()));
            return false;
        }
        string written = JobWriter.Write(read.Value!);
        Assert.Equal(written, JobWriter.Write(JobReader.Read(written).Value!));
        CheckPlan(read.Value!);
        return true;
    }

    // The writer of JSON refuses NaN and infinities, so that they cannot slip into a number; sentences are looked through.
    private static void CheckPlan(Job job)
    {
        string plan = PlanJson.Write(Planner.Plan(job, PlanData.Embedded), job.Settings, indented: false);
        // What the mutant itself wrote into a title or an id comes back as it is.
        string own = JobWriter.Write(job);
        if (own.Contains("NaN", StringComparison.Ordinal) || own.Contains('∞')) return;
        Assert.False(plan.Contains("NaN", StringComparison.Ordinal) || plan.Contains('∞') || plan.Contains("Infinity", StringComparison.Ordinal), plan);
    }
}
