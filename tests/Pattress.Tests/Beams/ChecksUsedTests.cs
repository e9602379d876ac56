namespace Pattress.Tests.Beams;

public class ChecksUsedTests
{
    /// <summary>Every row of sections C and D of the check list is used, or stands in unused_cd.csv with its reason.</summary>
    [Fact]
    public void No_row_is_left_out_silently()
    {
        var used = new[] { "published_c.csv", "published_d.csv" }.SelectMany(f => Table(f).Rows).Select(r => r["id"]).ToHashSet();
        var unused = Table("unused_cd.csv").Rows.ToList();
        Assert.All(unused, r => Assert.NotEmpty(r["reason"]));
        var missing = Ids.Where(id => !used.Contains(id) && unused.All(r => r["id"] != id)).ToList();
        Assert.True(missing.Count == 0, string.Join(" ", missing));
        Assert.Equal(61, Ids.Length);
        foreach (string file in new[] { "published_c.csv", "published_d.csv" }) Assert.All(Table(file).Rows, r => Assert.NotEmpty(r["source"]));
    }

    private static CsvTable Table(string name) => CsvTable.Parse(File.ReadAllText("Published/" + name));

    private static readonly string[] Ids = (
        "C-1S-U C-1S-P C-1S-Pa C-CANT C-FF C-PROP C-2S-U C-2S-U1 C-2S-P C-2S-P1 C-2S-T C-3S-U C-3S-U13 C-3S-U2 C-3S-U1 C-3S-P C-3S-P2 C-3S-P1 "
        + "C-4S-U C-4S-P C-4S-U124 C-5S-U C-MOV-2 C-OVH-1 C-OVH-2 C-OVH-OPT C-SPR-1 C-SPR-2 C-SPR-4BR C-SETTLE C-BOEF C-SHELF-1 C-SHELF-2 C-SHELF-3 "
        + "D-PIV-1 D-PIV-2 D-PIV-3 D-PIV-4 D-EL-1 D-EL-2 D-EL-3 D-IC-2-1 D-IC-2-2 D-IC-2-3 D-IC-2-4 D-IC-2-6 D-IC-3-2 D-IC-3-3 D-IC-3-4 D-IC-3-6 "
        + "D-IC-4-2 D-IC-4-3 D-IC-4-6 D-IC-6-4 D-CON-1 D-CON-2 D-CON-3 D-CON-4 D-CON-5 D-KERN-1 D-KERN-2").Split(' ');
}
