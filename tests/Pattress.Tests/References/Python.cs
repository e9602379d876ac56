using System.Diagnostics;
using System.Runtime.CompilerServices;

namespace Pattress.Tests.References;

/// <summary>Runs a reference written in Python. It needs /usr/bin/python3 with scipy; without them the test fails.</summary>
internal static class Python
{
    internal static string Run(string script, string input, [CallerFilePath] string here = "")
    {
        string file = Path.GetTempFileName();
        try
        {
            File.WriteAllText(file, input);
            var start = new ProcessStartInfo("/usr/bin/python3", [Path.Combine(Path.GetDirectoryName(here)!, "..", "References", script), file]) { RedirectStandardOutput = true, RedirectStandardError = true };
            using var python = Process.Start(start) ?? throw new InvalidOperationException("no /usr/bin/python3");
            var errors = python.StandardError.ReadToEndAsync();
            string output = python.StandardOutput.ReadToEnd();
            python.WaitForExit();
            Assert.True(python.ExitCode == 0, errors.Result);
            return output;
        }
        finally { File.Delete(file); }
    }
}
