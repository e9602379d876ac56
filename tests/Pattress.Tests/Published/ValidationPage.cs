using System.Text;

namespace Pattress.Tests.Published;

/// <summary>Writes docs/validation.md from what the tables check; on demand, since it changes the working tree.</summary>
public class ValidationPage
{
    [Fact(Explicit = true)]
    public void Write()
    {
        var text = new StringBuilder("# Validation\n\nGenerated from the tables of published values (run `dotnet run -- -class Pattress.Tests.Published.ValidationPage -explicit only` in tests/Pattress.Tests).\nEach value is held to half of its last printed digit, or to the tolerance whose reason stands in its row.\n\n| source | values checked | largest deviation | where |\n|---|---|---|---|\n");
        var rows = PublishedRow.Read("published_*_rules.csv").Where(r => !r.Rule.StartsWith("zones", StringComparison.Ordinal) && r.Expected != "not_covered");
        foreach (var source in rows.GroupBy(r => r.Source).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            var worst = source.Select(r => (r.Id, Off: Off(r))).MaxBy(r => r.Off);
            text.Append(FormattableString.Invariant($"| {source.Key} | {source.Count()} | {worst.Off * 100:0.####} % | {worst.Id} |\n"));
        }
        File.WriteAllText(Path.Combine(Root(), "docs", "validation.md"), text.ToString());
        Assert.True(text.Length > 1000);
    }

    private static double Off(PublishedRow row) => row.Value == 0 ? 0 : Math.Abs(RuleValuesTests.Number(row) / row.Value - 1);

    private static string Root()
    {
        string folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Pattress.slnx"))) folder = Path.GetDirectoryName(folder)!;
        return folder;
    }
}
