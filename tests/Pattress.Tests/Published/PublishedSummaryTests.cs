namespace Pattress.Tests.Published;

/// <summary>No published value is left out silently: each is used by a table or listed with its reason. The count is printed.</summary>
public class PublishedSummaryTests
{
    private static CsvTable Table(string path) => CsvTable.Parse(File.ReadAllText(path));

    private static HashSet<string> Ids(string pattern) =>
        [.. Directory.GetFiles(PublishedRow.Folder, pattern).SelectMany(f => Table(f).Rows).Select(r => r["id"])];

    [Fact]
    public void Every_value_is_used_or_listed_with_its_reason()
    {
        HashSet<string> used = Ids("published_*.csv"), unused = Ids("unused_*.csv"), missing = [];
        foreach (var section in Table(Path.Combine(PublishedRow.Folder, "all_ids.csv")).Rows.GroupBy(r => r["section"]))
        {
            var ids = section.Select(r => r["id"]).ToList();
            Console.WriteLine($"section {section.Key}: {ids.Count(used.Contains)} used, {ids.Count(i => !used.Contains(i) && unused.Contains(i))} unused with a reason, of {ids.Count}");
            missing.UnionWith(ids.Where(i => !used.Contains(i) && !unused.Contains(i)));
        }
        foreach (string file in Directory.GetFiles(PublishedRow.Folder, "unused_*.csv"))
            foreach (var row in Table(file).Rows.Where(r => !used.Contains(r["id"]))) Console.WriteLine($"  {row["id"]}: {row["reason"]}");
        Assert.Empty(missing);
    }

    [Fact]
    public void Every_reason_says_something() => Assert.All(
        Directory.GetFiles(PublishedRow.Folder, "unused_*.csv").SelectMany(f => Table(f).Rows), r => Assert.True(r["reason"].Length >= 10, r["id"]));
}
