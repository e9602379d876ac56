using System.Reflection;

namespace Pattress;

/// <summary>Reads the data that is embedded in the library (folder <c>data/</c> and <c>samples/</c> of the project).</summary>
public static class Embedded
{
    /// <summary>The text of an embedded file, e.g. <c>data/kinds.csv</c>.</summary>
    /// <exception cref="ArgumentException">No such file is embedded.</exception>
    public static string Text(string name)
    {
        using var stream = typeof(Embedded).Assembly.GetManifestResourceStream(name)
            ?? throw new ArgumentException($"no embedded file '{name}'", nameof(name));
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    /// <summary>Names of the embedded files below a folder, in ordinal order.</summary>
    public static IReadOnlyList<string> Names(string folder) =>
        [.. typeof(Embedded).Assembly.GetManifestResourceNames().Where(n => n.StartsWith(folder, StringComparison.Ordinal)).Order(StringComparer.Ordinal)];
}
