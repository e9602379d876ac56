using System.Diagnostics;
using System.Globalization;
using System.Reflection;
using System.Runtime.Loader;

namespace Pattress.Mutants;

/// <summary>
/// Runs tests with a mutant on, in a process of its own that may be killed. Asked by lines: "baseline" answers each test's number, time, fault and
/// the mutants it reaches; "try ID MS CASES" answers the test that kills it, or "survives".
/// </summary>
internal static class Worker
{
    internal static int Run(string folder, string[] spaces)
    {
        folder = Path.GetFullPath(folder);
        AppContext.SetData("APP_CONTEXT_BASE_DIRECTORY", folder + "/");
        var context = new AssemblyLoadContext("mutants");
        context.Resolving += (c, name) => File.Exists(Path.Combine(folder, name.Name + ".dll")) ? c.LoadFromAssemblyPath(Path.Combine(folder, name.Name + ".dll")) : null;
        var control = new Control(context.LoadFromAssemblyPath(Path.Combine(folder, "Pattress.dll")).GetType("MutantSwitch")!);
        var cases = TestCase.All(context.LoadFromAssemblyPath(Path.Combine(folder, "Pattress.Tests.dll")), spaces);
        var answers = Console.Out;
        Console.SetOut(TextWriter.Null);
        while (Console.In.ReadLine() is { } line)
        {
            string[] p = line.Split(' ');
            if (p[0] == "baseline") Baseline(cases, control, int.Parse(p[1], CultureInfo.InvariantCulture), answers);
            else answers.WriteLine(Try(cases, control, p));
            answers.Flush();
        }
        return 0;
    }

    private static void Baseline(List<TestCase> cases, Control control, int mutants, TextWriter answers)
    {
        for (int i = 0; i < cases.Count; i++)
        {
            // Once for static fields and the just-in-time compiler, once for the time and what it reaches. The time is the processor's, which a busy machine does not lengthen.
            double start = Used();
            string? fault = cases[i].Run();
            bool[] seen = new bool[mutants];
            control.Seen = seen;
            if (Used() - start < Campaign.SlowestMs) { start = Used(); fault ??= cases[i].Run(); }
            control.Seen = null;
            answers.WriteLine(string.Join('\t', i, (long)(Used() - start), fault ?? "", cases[i].Name, string.Join(',', Enumerable.Range(0, mutants).Where(m => seen[m]))));
        }
        answers.WriteLine("end");
    }

    private static double Used() => Process.GetCurrentProcess().TotalProcessorTime.TotalMilliseconds;

    private static readonly HashSet<int> Warm = [];

    private static string Try(List<TestCase> cases, Control control, string[] p)
    {
        // Static fields are set for good by whoever comes first: that must be nobody with a mutant on.
        foreach (int i in p[3].Split(',').Select(int.Parse))
            if (Warm.Add(i)) cases[i].Run();
        control.Active = int.Parse(p[1], CultureInfo.InvariantCulture);
        control.Deadline = Environment.TickCount64 + long.Parse(p[2], CultureInfo.InvariantCulture);
        foreach (string index in p[3].Split(','))
            if (cases[int.Parse(index, CultureInfo.InvariantCulture)] is var test && test.Run() is { } fault)
            {
                control.Active = -1;
                return $"{fault} in {test.Name}";
            }
        control.Active = -1;
        return "survives";
    }

    private sealed class Control(Type type)
    {
        private readonly FieldInfo _active = type.GetField("Active")!, _seen = type.GetField("Seen")!, _deadline = type.GetField("Deadline")!;

        internal int Active { set => _active.SetValue(null, value); }

        internal bool[]? Seen { set => _seen.SetValue(null, value); }

        internal long Deadline { set => _deadline.SetValue(null, value); }
    }
}
