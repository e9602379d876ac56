using System.Text.RegularExpressions;

namespace Pattress.Tests.Rules;

/// <summary>The project's own source, found upwards from where the tests run.</summary>
internal static partial class SourceTree
{
    /// <summary>Folder that holds the solution.</summary>
    public static string Root { get; } = Find(AppContext.BaseDirectory);

    /// <summary>Source files of a folder without what a build made, in ordinal order; paths with forward slashes from the root.</summary>
    public static IEnumerable<string> Files(string folder, params string[] endings) =>
        Directory.EnumerateFiles(Path.Combine(Root, folder), "*", SearchOption.AllDirectories)
            .Select(f => Path.GetRelativePath(Root, f).Replace('\\', '/'))
            .Where(f => endings.Any(e => f.EndsWith(e, StringComparison.Ordinal)) && !f.Contains("/bin/") && !f.Contains("/obj/"))
            .Order(StringComparer.Ordinal);

    public static string Text(string file) => File.ReadAllText(Path.Combine(Root, file));

    /// <summary>The code of a file without comments and without what stands in quotes.</summary>
    public static string Code(string file) => NotCode().Replace(Text(file), " ");

    [GeneratedRegex(""""//[^\n]*|"""+.*?"""+|/\*.*?\*/|"(?:\\.|[^"\\\n])*"|'(?:\\.|[^'\\\n])'"""", RegexOptions.Singleline)]
    private static partial Regex NotCode();

    private static string Find(string folder) =>
        File.Exists(Path.Combine(folder, "Pattress.slnx")) ? folder : Find(Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("no solution above the tests"));
}
