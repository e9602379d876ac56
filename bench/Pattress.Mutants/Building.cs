using System.Reflection;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Pattress.Mutants;

/// <summary>Compiles the library with all mutants of some folders, into a copy of the tests' binaries.</summary>
internal static class Building
{
    private const int Rounds = 12;

    internal static int Run(string tests, string folder, string[] parts)
    {
        Copy(new DirectoryInfo(tests), Directory.CreateDirectory(folder));
        string root = Root(), library = Path.Combine(root, "src", "Pattress");
        var trees = Sources(library).Select(f => CSharpSyntaxTree.ParseText(File.ReadAllText(f), new CSharpParseOptions(LanguageVersion.Preview), Path.GetRelativePath(root, f))).ToList();
        var plain = Compilation(trees);
        var targets = trees.Where(t => parts.Any(p => t.FilePath.StartsWith(Path.Combine("src", "Pattress", p), StringComparison.Ordinal))).ToHashSet();
        HashSet<int> dropped = [];
        for (int round = 0; round < Rounds; round++)
        {
            var (mutated, found, skipped) = Mutate(plain, trees, targets, dropped);
            var errors = Emit(mutated, Path.Combine(tests, "Pattress.dll"), Path.Combine(folder, "Pattress.dll"));
            if (errors.Count == 0) return Done(folder, found, dropped, skipped, targets.Count);
            int before = dropped.Count;
            foreach (var error in errors) dropped.UnionWith(At(error));
            Console.Error.WriteLine($"{errors.Count} errors, e.g. {errors[0]}; {dropped.Count} mutants left out");
            if (dropped.Count == before) return 1;
        }
        return 1;
    }

    private static int Done(string folder, List<Mutant> found, HashSet<int> dropped, int skipped, int files)
    {
        var kept = found.Where(m => !dropped.Contains(m.Id)).ToList();
        File.WriteAllLines(Path.Combine(folder, "mutants.tsv"), kept.Select(m => m.Row));
        File.WriteAllText(Path.Combine(folder, "about.txt"), $"{kept.Count - 1} mutants in {files} files; {dropped.Count} do not compile; {skipped} places in static initialisers left alone");
        Console.WriteLine(File.ReadAllText(Path.Combine(folder, "about.txt")));
        return 0;
    }

    private static (CSharpCompilation, List<Mutant>, int) Mutate(CSharpCompilation plain, List<SyntaxTree> trees, HashSet<SyntaxTree> targets, HashSet<int> dropped)
    {
        List<Mutant> found = [new(0, "everywhere", 0, "NaN", "planted: every double that an arrow returns")];
        int skipped = 0;
        var result = new List<SyntaxTree>();
        foreach (var tree in trees)
        {
            if (!targets.Contains(tree)) { result.Add(tree); continue; }
            var rewriter = new Mutating(plain.GetSemanticModel(tree), tree.FilePath, found, dropped);
            result.Add(tree.WithRootAndOptions(rewriter.Visit(tree.GetRoot()), tree.Options));
            skipped += rewriter.Skipped;
        }
        result.Add(CSharpSyntaxTree.ParseText(SwitchSource.Text, new CSharpParseOptions(LanguageVersion.Preview), "MutantSwitch.cs"));
        return (Compilation(result), found, skipped);
    }

    private static CSharpCompilation Compilation(IEnumerable<SyntaxTree> trees)
    {
        string pack = Directory.GetDirectories("/usr/share/dotnet/packs/Microsoft.NETCore.App.Ref").Order(StringComparer.Ordinal).Last();
        return CSharpCompilation.Create("Pattress", trees, Directory.GetFiles(Path.Combine(pack, "ref", "net10.0"), "*.dll").Select(f => MetadataReference.CreateFromFile(f)),
            new CSharpCompilationOptions(OutputKind.DynamicallyLinkedLibrary, optimizationLevel: OptimizationLevel.Release, nullableContextOptions: NullableContextOptions.Enable, deterministic: true, warningLevel: 0));
    }

    private static List<Diagnostic> Emit(CSharpCompilation compilation, string original, string to)
    {
        var from = Assembly.LoadFile(Path.GetFullPath(original));
        var resources = from.GetManifestResourceNames().Select(n => new ResourceDescription(n, () => from.GetManifestResourceStream(n)!, true));
        using var stream = new MemoryStream();
        var result = compilation.Emit(stream, manifestResources: resources);
        if (result.Success) File.WriteAllBytes(to, stream.ToArray());
        return [.. result.Diagnostics.Where(d => d.Severity == DiagnosticSeverity.Error)];
    }

    /// <summary>The mutants round an error: of the smallest enclosing piece of code that holds any.</summary>
    private static IEnumerable<int> At(Diagnostic error)
    {
        var node = error.Location.SourceTree?.GetRoot().FindNode(error.Location.SourceSpan);
        foreach (var piece in node?.AncestorsAndSelf() ?? [])
        {
            var ids = piece.DescendantNodesAndSelf().OfType<InvocationExpressionSyntax>().Where(i => i.Expression.ToString().StartsWith("global::MutantSwitch.", StringComparison.Ordinal))
                .SelectMany(i => i.ArgumentList.Arguments.TakeWhile(a => a.Expression is LiteralExpressionSyntax).Take(i.Expression.ToString() is var n && (n.Contains("Less") || n.Contains("More")) ? 2 : 1))
                .Select(a => a.Expression).OfType<LiteralExpressionSyntax>().Select(l => l.Token.Value).OfType<int>().Where(i => i > 0).ToList();
            if (ids.Count > 0) return ids;
        }
        return [];
    }

    private static IEnumerable<string> Sources(string library) => Directory.GetFiles(library, "*.cs", SearchOption.AllDirectories)
        .Where(f => !f.Contains("/bin/", StringComparison.Ordinal) && (!f.Contains("/obj/", StringComparison.Ordinal) || f.Contains("/obj/Release/net10.0/Pattress.", StringComparison.Ordinal)))
        .Order(StringComparer.Ordinal);

    private static void Copy(DirectoryInfo from, DirectoryInfo to)
    {
        foreach (var file in from.GetFiles()) file.CopyTo(Path.Combine(to.FullName, file.Name), true);
        foreach (var sub in from.GetDirectories()) Copy(sub, to.CreateSubdirectory(sub.Name));
    }

    private static string Root()
    {
        string folder = Directory.GetCurrentDirectory();
        while (!File.Exists(Path.Combine(folder, "Pattress.slnx"))) folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("run it inside the repository");
        return folder;
    }
}
