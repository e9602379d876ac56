using System.Text.RegularExpressions;

namespace Pattress.Tests.Rules;

/// <summary>Apps and papers never calculate: they ask through the doors and show the answer.</summary>
public partial class AppRuleTests
{
    // What apps may name of the library: documents in and out, text, the answer's records, the catalogues that are shown.
    private static readonly string[] Doors =
    [
        "Pattress", "Pattress.Jobs", "Pattress.Jobs.Proofs", "Pattress.Jobs.Certain", "Pattress.Trials.Documents", "Pattress.Jobs.Site", "Pattress.Jobs.Merging", "Pattress.Jobs.WallFile", "Pattress.Jobs.Text", "Pattress.Jobs.Doors", "Pattress.Jobs.Buying", "Pattress.Jobs.Layouts", "Pattress.Jobs.Stocks", "Pattress.Jobs.Repairs", "Pattress.Jobs.Own", "Pattress.Planning.Programs", "Pattress.Solvers", "Pattress.Working", "Pattress.Quantities", "Pattress.Papers",
        "Pattress.Papers.Drawings", "Pattress.Actions", "Pattress.Actions.Fixtures", "Pattress.Web", "Pattress.Server", "Pattress.Cli",
    ];

    // Folders that calculate are entered by their document, or for their catalogue, alone.
    private static readonly string[] Entries =
    [
        "BracketDocument", "CompareDocument", "CertaintyDocument", "ProofDocument", "BeamDocument", "LocateDocument", "TrialDocument", "TrialJson", "RuleBook", "RuleDocument", "FixingCatalogue",
    ];

    [Theory]
    [InlineData("src/Pattress.Cli")]
    [InlineData("src/Pattress.Server")]
    public void Command_line_and_server_do_no_mathematics(string folder) =>
        Assert.DoesNotContain(SourceTree.Files(folder, ".cs"), f => Mathematics().IsMatch(SourceTree.Code(f)));

    [Theory]
    [InlineData("src/Pattress.Cli")]
    [InlineData("src/Pattress.Server")]
    [InlineData("src/Pattress.Web")]
    [InlineData("src/Pattress.Papers")]
    [InlineData("src/Pattress.Pdf")]
    public void Apps_and_papers_enter_by_the_doors(string folder)
    {
        var files = SourceTree.Files(folder, ".cs", ".razor").ToList();
        Assert.NotEmpty(files);
        Assert.Empty(files.SelectMany(f => Inside(f).Select(space => $"{f} uses {space}")));
    }

    private static IEnumerable<string> Inside(string file)
    {
        string code = SourceTree.Code(file);
        var spaces = Using().Matches(code).Select(m => m.Groups[1].Value).Where(s => !IsDoor(s)).Distinct();
        return Entries.Any(e => code.Contains(e + ".", StringComparison.Ordinal)) ? [] : spaces;
    }

    private static bool IsDoor(string space) =>
        Doors.Contains(space) || new[] { "Pattress.Web.", "Pattress.Server.", "Pattress.Cli.", "Pattress.Papers.", "Pattress.Pdf" }.Any(p => space.StartsWith(p, StringComparison.Ordinal));

    [GeneratedRegex(@"(?<![\w.])MathF?\.|System\.Numerics|System\.Math")]
    private static partial Regex Mathematics();

    [GeneratedRegex(@"^\s*@?using\s+(?:static\s+|\w+\s*=\s*)?(Pattress[\w.]*)", RegexOptions.Multiline)]
    private static partial Regex Using();
}
