using System.Diagnostics;
using System.Globalization;

namespace Pattress.Tests.Trials;

/// <summary>Runs the reference script once; a machine without python3 and scipy fails the tests rather than skipping them.</summary>
public sealed class ScipyReferences
{
    public sealed record Value(string Name, double[] Arguments, double Expected);

    private static readonly Lazy<IReadOnlyList<Value>> Values = new(Run);

    public static IReadOnlyList<Value> Of(string name)
    {
        var found = Values.Value.Where(v => v.Name == name).ToList();
        Assert.NotEmpty(found);
        return found;
    }

    private static IReadOnlyList<Value> Run()
    {
        var start = new ProcessStartInfo(Interpreter(), Script()) { RedirectStandardOutput = true, RedirectStandardError = true };
        using var process = Process.Start(start) ?? throw new InvalidOperationException("python3 did not start");
        var errors = process.StandardError.ReadToEndAsync();
        string text = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.True(process.ExitCode == 0, "python3 with scipy is needed (package python3-scipy): " + errors.Result);
        return [.. text.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(Parse)];
    }

    /// <summary>The system's own python, which has the system's scipy, before any other on the path.</summary>
    private static string Interpreter() => File.Exists("/usr/bin/python3") ? "/usr/bin/python3" : "python3";

    private static string Script()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            string path = Path.Combine(folder.FullName, "tests", "Pattress.Tests", "References", "trials_references.py");
            if (File.Exists(path)) return path;
        }
        throw new FileNotFoundException("trials_references.py above the test folder");
    }

    private static Value Parse(string line)
    {
        string[] parts = line.Split(';');
        return new(parts[0], [.. parts[1].Split(' ').Select(Number)], Number(parts[2]));
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
