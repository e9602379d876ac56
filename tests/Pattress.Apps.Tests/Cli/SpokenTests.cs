using System.Text.RegularExpressions;
using Pattress.Jobs.Text;

namespace Pattress.Apps.Tests.Cli;

/// <summary>What the command line says stands in the text layer, so that it speaks the language of the job.</summary>
public partial class SpokenTests
{
    private static IEnumerable<(string File, string Text)> Sources => Directory
        .EnumerateFiles(Path.Combine(Samples.Root, "src", "Pattress.Cli"), "*.cs", SearchOption.AllDirectories)
        .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
        .Select(f => (Path.GetFileName(f), Comment().Replace(File.ReadAllText(f), "")));

    [Fact]
    public void Every_code_that_is_asked_for_has_a_text()
    {
        var codes = Sources.SelectMany(s => Asked().Matches(s.Text).Select(m => m.Groups[1].Value)
            .Concat(Heads().Matches(s.Text).SelectMany(m => Literal().Matches(m.Groups[1].Value)).Select(m => m.Groups[1].Value.TrimStart('>')))).Distinct().ToList();
        Assert.True(codes.Count > 80, $"the scan found {codes.Count} codes");
        Assert.Equal([], codes.Where(c => !Texts.Has("cli." + c)));
    }

    [Fact]
    public void No_text_is_left_that_nobody_asks_for()
    {
        string all = string.Concat(Sources.Select(s => s.Text));
        var kept = CsvTable.FromEmbedded("data/text/codes.cli.csv").Rows.Select(r => r["code"]["cli.".Length..]).Where(c => !c.StartsWith("help.", StringComparison.Ordinal));
        Assert.Equal([], kept.Where(c => !all.Contains($"\"{c}\"", StringComparison.Ordinal) && !all.Contains($"\">{c}\"", StringComparison.Ordinal) && !all.Contains($"\"cli.{c}\"", StringComparison.Ordinal)
            && !(c.EndsWith(".one", StringComparison.Ordinal) && all.Contains($"Count(\"{c[..^4]}\"", StringComparison.Ordinal))));
    }

    /// <summary>Two words of small letters, or a heading of one word. What a problem allows is said in the words of the doors, in English (Problem).</summary>
    [Fact]
    public void No_sentence_is_left_in_the_source()
    {
        var said = Sources.SelectMany(s => s.Text.Split('\n').Where(line => !Door().IsMatch(line)).SelectMany(line => Literal().Matches(Inside().Replace(line, ""))
            .Select(m => m.Groups[1].Value).Where(t => !Code().IsMatch(t) && Sentence().IsMatch(t)).Select(t => $"{s.File}: {t}")));
        Assert.Equal([], said);
        Assert.Matches(Sentence(), "To buy");
        Assert.Matches(Sentence(), ">Pull");
    }

    [Fact]
    public async Task Help_and_plan_are_spoken_by_the_text_layer()
    {
        var ran = await Ran.Pattress("plan", Samples.DemoHouse);
        foreach (string code in new[] { "cli.to_hang", "cli.to_buy", "cli.order", "cli.walls" }) Assert.Contains("\n" + Texts.Name(code) + "\n", ran.Out);
    }

    [GeneratedRegex(@"^\s*//.*$|(?<=[;{}\s])//\s.*$", RegexOptions.Multiline)]
    private static partial Regex Comment();

    [GeneratedRegex("""(?:\bT|\bCount|\bSaid)\("([a-z_.]+)"[,)]""")]
    private static partial Regex Asked();

    [GeneratedRegex(@"\.Table\(([^)]*)\)")]
    private static partial Regex Heads();

    [GeneratedRegex("""
        "((?:[^"\\]|\\.)*)"
        """)]
    private static partial Regex Literal();

    // What stands between braces of a text is code; where it holds texts of its own, pieces of it are taken for texts.
    [GeneratedRegex(@"\{[^{}""]*\}")]
    private static partial Regex Inside();

    [GeneratedRegex(@"[(){}?=<]|\.[A-Z]")]
    private static partial Regex Code();

    [GeneratedRegex("Problem|Refused|Refuse\\(|Wrong\\(|wrong_words|unknown_switch|duplicate_field|folder_unwritable|GeneratedRegex")]
    private static partial Regex Door();

    [GeneratedRegex("[A-Za-z][a-z]+,? [a-z]{2,}|^(?=.*[aeiou])>?[A-Z][a-z-]+[:.]?$")]
    private static partial Regex Sentence();
}
