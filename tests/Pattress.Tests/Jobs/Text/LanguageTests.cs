using Pattress.Jobs;
using Pattress.Jobs.Text;

namespace Pattress.Tests.Jobs.Text;

/// <summary>Both kinds of English are complete, and another language is one file.</summary>
public class LanguageTests
{
    private static readonly IReadOnlyList<CsvTable> English = [.. Embedded.Names("data/text/").Select(CsvTable.FromEmbedded)];

    [Fact]
    public void One_file_says_everything_in_another_language()
    {
        var codes = new TextTable(English, []).Codes.ToList();
        Assert.True(codes.Count > 500, "hardly any text was found");
        var other = CsvTable.Parse("code,text\n" + string.Join('\n', codes.Select(c => $"{c},\"<{c}>\"")));
        var table = new TextTable(English, [("other", other)]);
        Assert.Equal(["british", "american", "other"], table.Tongues);
        Assert.Equal([], codes.Where(c => table.Of(c, "other") != $"<{c}>"));
    }

    [Fact]
    public void What_its_file_leaves_out_is_said_in_british_english()
    {
        var table = new TextTable(English, [("other", CsvTable.Parse("code,text\nenglish.other,Other\nverdict_ready,fertig\nverdict_not_here,\n"))]);
        Assert.Equal("fertig", table.Of("verdict_ready", "other"));
        Assert.Equal(table.Of("verdict_not_here", "british"), table.Of("verdict_not_here", "other"));
        Assert.NotEqual("fertig", table.Of("verdict_ready", "british"));
        Assert.Equal("Other", table.Of("english.other", "british"));
        Assert.Null(table.Of("no_such_code", "other"));
    }

    [Fact]
    public void British_and_american_english_are_complete()
    {
        var table = new TextTable(English, []);
        Assert.Equal([], table.Codes.Where(c => table.Of(c, "british") is not { Length: > 0 } || table.Of(c, "american") is not { Length: > 0 }));
        Assert.Equal([("british", "en-GB"), ("american", "en-US")], Texts.Tongues.Select(t => (t, Texts.Tag(new Settings { English = t }))));
    }

    // British spellings that the American column must not have; from a general knowledge of both, no source.
    [Theory]
    [InlineData("colour"), InlineData("grey"), InlineData("utilis"), InlineData("mould"), InlineData("fibre"), InlineData("metre"), InlineData("centre"), InlineData("skirting"), InlineData("neighbour")]
    public void American_texts_are_spelt_so(string british)
    {
        var table = new TextTable(English, []);
        Assert.Equal([], table.Codes.Where(c => table.Of(c, "american")!.Contains(british, StringComparison.OrdinalIgnoreCase)));
    }
}
