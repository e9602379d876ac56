using System.Diagnostics;
using System.Globalization;
using System.Text;

namespace Pattress.Tests.References;

/// <summary>An input for the finite-element program, in invariant numbers.</summary>
internal sealed class Deck
{
    private readonly StringBuilder _text = new();

    internal void Line(FormattableString line) => _text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');

    internal void Line(string line) => _text.Append(line).Append('\n');

    public override string ToString() => _text.ToString();
}

/// <summary>Forces (N) and displacements (mm) across the board by node; stresses along x and y by element, one a point, N/mm².</summary>
internal sealed record BoardAnswer(Dictionary<int, double> Forces, Dictionary<int, double> Sunk, List<(int Element, double X, double Y)> Stresses);

/// <summary>Debian's calculix-ccx, a program written apart from ours. Where it is missing the test fails.</summary>
internal static class FiniteElements
{
    /// <summary>Reaction of each printed node in the last increment.</summary>
    internal static Dictionary<int, (double X, double Y, double Z)> GroundForces(string deck) => Read(Solved(deck));

    /// <summary>What a board of shells was asked for: forces on held nodes, displacements of others, stresses of the points in elements.</summary>
    internal static BoardAnswer Board(string deck)
    {
        var answer = new BoardAnswer([], [], []);
        string part = "";
        foreach (string line in Solved(deck))
        {
            string[] p = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            if (p.Length > 1 && !int.TryParse(p[0], CultureInfo.InvariantCulture, out _)) part = p[0];
            else if (p.Length >= 4 && part == "displacements") answer.Sunk[int.Parse(p[0], CultureInfo.InvariantCulture)] = N(p[3]);
            else if (p.Length >= 4 && part == "forces") answer.Forces[int.Parse(p[0], CultureInfo.InvariantCulture)] = N(p[3]);
            else if (p.Length >= 8 && part == "stresses") answer.Stresses.Add((int.Parse(p[0], CultureInfo.InvariantCulture), N(p[2]), N(p[3])));
        }
        return answer;
    }

    private static string[] Solved(string deck)
    {
        var folder = Directory.CreateTempSubdirectory("ccx");
        try
        {
            File.WriteAllText(Path.Combine(folder.FullName, "job.inp"), deck);
            Run(folder.FullName);
            return File.ReadAllLines(Path.Combine(folder.FullName, "job.dat"));
        }
        finally { folder.Delete(recursive: true); }
    }

    private static void Run(string folder)
    {
        var start = new ProcessStartInfo("ccx", ["job"]) { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["OMP_NUM_THREADS"] = "1";
        using var program = Process.Start(start) ?? throw new InvalidOperationException("no ccx: install calculix-ccx");
        var errors = program.StandardError.ReadToEndAsync();
        string output = program.StandardOutput.ReadToEnd();
        program.WaitForExit();
        Assert.True(program.ExitCode == 0 && !output.Contains("*ERROR", StringComparison.Ordinal), output[Math.Max(0, output.Length - 2000)..] + errors.Result);
    }

    private static Dictionary<int, (double X, double Y, double Z)> Read(string[] lines)
    {
        var forces = new Dictionary<int, (double, double, double)>();
        foreach (string line in lines)
        {
            string[] p = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            if (p.Length == 4 && int.TryParse(p[0], CultureInfo.InvariantCulture, out int node)) forces[node] = (N(p[1]), N(p[2]), N(p[3]));
        }
        return forces;
    }

    private static double N(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
