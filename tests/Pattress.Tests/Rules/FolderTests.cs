namespace Pattress.Tests.Rules;

/// <summary>Who may use whom inside the library. The table is docs/decisions/0001-layout.md; a new edge is a decision.</summary>
public class FolderTests
{
    // What every stage speaks.
    private const string Speech = "Root Quantities Working Documents";

    private static readonly Dictionary<string, string> Allowed = new()
    {
        ["Root"] = "",
        ["Quantities"] = "Root",
        ["Working"] = "Root",
        ["Documents"] = "Root Quantities",
        ["Functions"] = "Root",
        ["Walls"] = Speech + " Functions",
        ["Supports"] = Speech + " Functions Walls",
        ["Actions"] = Speech + " Functions",
        ["Brackets"] = Speech + " Functions Actions",
        ["Trials"] = Speech + " Functions Actions Brackets",
        ["Strength"] = Speech + " Functions Actions Brackets Trials",
        ["Fixings"] = Speech + " Functions Actions Brackets Trials Strength Walls Supports",
        ["Answers"] = "Root Working Documents Actions",
        ["Planning"] = Speech + " Functions Actions Brackets Trials Strength Walls Supports Fixings Answers",
        ["Jobs"] = Speech + " Functions Actions Brackets Trials Strength Walls Supports Fixings Answers Planning",
    };

    [Fact]
    public void Every_part_of_the_library_is_decided_on()
    {
        var map = new LibraryMap();
        Assert.Empty(map.Files.Select(LibraryMap.PartOf).Distinct().Except(Allowed.Keys));
    }

    [Fact]
    public void Parts_use_lower_parts_only()
    {
        var map = new LibraryMap();
        Assert.True(map.Files.Count > 50, "the source was not found");
        Assert.Empty(map.Files.SelectMany(file => Forbidden(map, file)));
    }

    /// <summary>The rule can fail: a made-up table without an edge that is there is caught.</summary>
    [Fact]
    public void A_forbidden_use_is_seen()
    {
        var map = new LibraryMap();
        string answer = map.Files.Single(f => f.EndsWith("Jobs/Answer.cs", StringComparison.Ordinal));
        Assert.Contains(map.Uses(answer), u => u.Part == "Actions");
    }

    [Fact]
    public void No_two_parts_use_each_other()
    {
        foreach (var (part, uses) in Allowed)
            Assert.DoesNotContain(uses.Split(' ', StringSplitOptions.RemoveEmptyEntries), u => Allowed[u].Split(' ').Contains(part));
    }

    private static IEnumerable<string> Forbidden(LibraryMap map, string file)
    {
        string part = LibraryMap.PartOf(file);
        string[] allowed = Allowed[part].Split(' ');
        return map.Uses(file).Where(u => !allowed.Contains(u.Part)).Select(u => $"{file} ({part}) uses {u.Type} of {u.Part}");
    }
}
