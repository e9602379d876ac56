namespace Pattress.Apps.Tests;

/// <summary>The project's own files, found upwards from where the tests run.</summary>
internal static class Samples
{
    public static string Root { get; } = Find(AppContext.BaseDirectory);

    public static string DemoHouse => Path.Combine(Root, "samples", "demo-house.job.json");

    private static string Find(string folder) =>
        File.Exists(Path.Combine(folder, "Pattress.slnx")) ? folder : Find(Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("no solution above the tests"));
}
