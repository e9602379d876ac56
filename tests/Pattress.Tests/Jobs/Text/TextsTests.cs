using System.Text.RegularExpressions;
using Pattress.Actions.Fixtures;
using Pattress.Jobs;
using Pattress.Jobs.Text;

namespace Pattress.Tests.Jobs.Text;

public partial class TextsTests
{
    private static readonly Settings Usual = new();

    [Fact]
    public void A_sentence_says_its_values_in_the_units_of_the_job()
    {
        var problem = new Problem("negative", "$.walls[0].width_mm", "-5", "a length");
        Assert.Equal("$.walls[0].width_mm: -5 is negative. Allowed: a length.", Texts.Sentence(problem));
    }

    [Fact]
    public void Every_code_in_the_library_has_a_sentence()
    {
        var codes = Sources().SelectMany(text => CodeLiteral().Matches(text)).Select(m => m.Groups[1].Success ? m.Groups[1].Value : m.Groups[2].Value).Distinct().ToList();
        Assert.True(codes.Count > 15, "the scan found hardly any code");
        Assert.Equal([], codes.Where(c => !Texts.Has(c)).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_kind_of_fixture_and_each_of_its_fields_has_a_name() =>
        Assert.Equal([], FixtureCatalogue.Kinds.SelectMany(k => k.Fields.Select(f => "field." + f.Name).Prepend("fixture." + k.Id))
            .Distinct().Where(c => !Texts.Has(c)).Order(StringComparer.Ordinal));

    [Fact]
    public void No_code_has_two_texts()
    {
        var codes = Embedded.Names("data/text/").SelectMany(n => CsvTable.FromEmbedded(n).Rows.Select(r => r["code"])).ToList();
        Assert.Equal([], codes.GroupBy(c => c).Where(g => g.Count() > 1).Select(g => g.Key));
        Assert.Equal([], codes.Where(c => c.Length > 0 && Texts.Sentence(new Reason(c), Usual).Length == 0));
    }

    [Fact]
    public void Sentences_neither_shout_nor_speak_of_placeholders_that_are_not_there()
    {
        var texts = Embedded.Names("data/text/").SelectMany(n => CsvTable.FromEmbedded(n).Rows.SelectMany(r => new[] { r["british"], r["american"] }));
        Assert.Equal([], texts.Where(t => t.Contains('!') || UnknownPlaceholder().IsMatch(t)));
    }

    [Fact]
    public void A_code_without_a_text_is_shown_in_plain_words() =>
        Assert.Equal("no such code", Texts.Sentence(new Reason("no_such_code"), Usual));

    private static IEnumerable<string> Sources() =>
        Directory.EnumerateFiles(Path.Combine(Root(), "src", "Pattress"), "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)).Select(File.ReadAllText);

    private static string Root()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "Pattress.slnx"))) folder = Path.GetDirectoryName(folder);
        return folder ?? throw new DirectoryNotFoundException("the tests run inside the repository");
    }

    [GeneratedRegex("""(?:new Reason|new Problem|new Assumption|problems\.Add)\("([^"]+)"|new\("([a-z_.]+)", Said\.""")]
    private static partial Regex CodeLiteral();

    [GeneratedRegex(@"\{(?![0-9]\})")]
    private static partial Regex UnknownPlaceholder();
}
