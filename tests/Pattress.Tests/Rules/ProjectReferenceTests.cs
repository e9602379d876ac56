using System.Xml.Linq;

namespace Pattress.Tests.Rules;

/// <summary>References between projects, as docs/decisions/0001-layout.md has them. A new edge is a decision.</summary>
public class ProjectReferenceTests
{
    private static readonly Dictionary<string, string[]> Allowed = new()
    {
        ["Pattress"] = [],
        ["Pattress.Papers"] = ["Pattress"],
        ["Pattress.Pdf"] = ["Pattress", "Pattress.Papers"],
        ["Pattress.Solvers"] = ["Pattress"],
        ["Pattress.Web"] = ["Pattress", "Pattress.Papers", "Pattress.Pdf"],
        ["Pattress.Server"] = ["Pattress", "Pattress.Papers", "Pattress.Pdf", "Pattress.Solvers", "Pattress.Web"],
        ["Pattress.Cli"] = ["Pattress", "Pattress.Papers", "Pattress.Pdf", "Pattress.Server"],
    };

    [Fact]
    public void Every_project_is_decided_on() =>
        Assert.Equal(Allowed.Keys.Order(StringComparer.Ordinal), SourceTree.Files("src", ".csproj").Select(Name).Order(StringComparer.Ordinal));

    [Fact]
    public void Projects_reference_down_the_way_only()
    {
        foreach (string project in SourceTree.Files("src", ".csproj"))
            Assert.Empty(References(project).Except(Allowed[Name(project)]).Select(r => $"{Name(project)} references {r}"));
    }

    [Fact]
    public void The_library_has_no_package_at_run_time()
    {
        var packages = XDocument.Parse(SourceTree.Text("src/Pattress/Pattress.csproj")).Descendants("PackageReference")
            .Where(p => (string?)p.Attribute("PrivateAssets") != "all").Select(p => (string?)p.Attribute("Include"));
        Assert.Empty(packages);
    }

    [Fact]
    public void The_built_library_refers_to_the_platform_alone() =>
        Assert.All(typeof(Embedded).Assembly.GetReferencedAssemblies(), a => Assert.StartsWith("System", a.Name));

    [Fact]
    public void The_built_papers_refer_to_the_library_and_their_packages_alone() =>
        Assert.All(System.Reflection.Assembly.Load("Pattress.Papers").GetReferencedAssemblies(),
            a => Assert.True(a.Name is "Pattress" or "OxyPlot" || a.Name!.StartsWith("System", StringComparison.Ordinal), a.Name));

    private static string Name(string project) => Path.GetFileNameWithoutExtension(project);

    private static IEnumerable<string> References(string project) => XDocument.Parse(SourceTree.Text(project))
        .Descendants("ProjectReference").Select(r => Path.GetFileNameWithoutExtension(((string)r.Attribute("Include")!).Replace('\\', '/')));
}
