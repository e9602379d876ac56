using System.Globalization;
using System.Text.Json;
using Pattress.Jobs.Text;

namespace Pattress.Cli.Printing;

/// <summary>The answer of <c>pattress trial</c> as text.</summary>
internal sealed class TrialSheet(Sheet sheet)
{
    /// <summary>Pairs beyond this stand in the JSON and in <c>pattress compare</c> only.</summary>
    private const int MostPairs = 10;

    /// <summary>The text of the document.</summary>
    public static string Text(string json, Terminal terminal)
    {
        using var document = JsonDocument.Parse(json);
        var sheet = new Sheet(terminal, document.RootElement.Settings());
        new TrialSheet(sheet).Write(document.RootElement);
        return sheet.ToString();
    }

    private void Write(JsonElement root)
    {
        foreach (var note in root.List("notes")) sheet.Paragraph(note.GetString()!.Replace('_', ' '));
        sheet.Heading(sheet.T("loads"));
        WriteKinds(root.List("kinds"));
        sheet.Paragraph(sheet.T("characteristic.says", Said.Words(root.Percent("fractile")), Said.Words(root.Percent("confidence")), Said.Words(root.Text("law"))));
        foreach (var kind in root.List("kinds")) WriteReasons(kind);
        WritePairs(root.List("comparisons"));
        foreach (var e in root.List("effects"))
            sheet.Item("-", sheet.T("effect", Word(e, "column"), Word(e, "level"), Word(e, "against"), Two(e, "ratio"), Two(e, "ratio_low"), Two(e, "ratio_high"), Decided(e)));
        sheet.Gap();
        foreach (var assumed in root.List("assumptions")) sheet.Item("-", assumed.Why());
    }

    private void WriteKinds(IReadOnlyList<JsonElement> kinds)
    {
        var table = sheet.Table("kind", ">n", ">mean", ">s", ">v", ">characteristic", ">middle", ">low");
        foreach (var k in kinds)
        {
            bool together = k.TryGetProperty("predictive", out var next), some = k.TryGetProperty("characteristic", out var low);
            table.Row(Name(k), N(k, "n"), N(k, "mean_n"), N(k, "s_n"), k.Maybe("cov") is { } v ? v.ToString("0.00", CultureInfo.InvariantCulture) : "-",
                some ? N(low, "value_n") : "-", together ? N(next, "median_n") : "-", together ? N(next, "fractile_n") : "-");
        }
        sheet.Write(table);
    }

    private void WriteReasons(JsonElement kind)
    {
        foreach (var s in kind.List("suspects")) sheet.Item("-", sheet.T("suspect", Said.Words(Name(kind)), Said.Words(N(s, "load_n")), Said.Count((int)s.Number("line")), Said.Words(s.Text("by")), Three(s, "statistic"), Three(s, "critical")));
        foreach (var reason in kind.List("reasons")) sheet.Item("-", $"{Name(kind)}: {reason.Why()}");
    }

    private void WritePairs(IReadOnlyList<JsonElement> pairs)
    {
        if (pairs.Count == 0) return;
        sheet.Paragraph(sheet.T(pairs.Count > MostPairs ? "of_pairs.many" : "of_pairs", Said.Count(pairs.Count), Said.Count(pairs.Count(p => p.GetProperty("decided").GetBoolean()))));
        if (pairs.Count > MostPairs) return;
        foreach (var p in pairs)
            sheet.Item("-", sheet.T("pair.says", Said.Name(p.Text("kind")), Said.Name(p.Text("other")), Said.Words(p.Percent("chance_stronger")), Decided(p)));
    }

    private static string Name(JsonElement kind) => Texts.Name(kind.Text("kind"));

    private Said Decided(JsonElement of) => Said.Words(sheet.T(of.GetProperty("decided").GetBoolean() ? "decided" : "undecided"));

    private static Said Word(JsonElement of, string name) => Said.Words(of.Text(name).Replace('_', ' '));

    private static Said Two(JsonElement of, string name) => Said.Words(of.Number(name).ToString("0.00", CultureInfo.InvariantCulture));

    private static Said Three(JsonElement of, string name) => Said.Words(of.Number(name).ToString("0.000", CultureInfo.InvariantCulture));

    private static string N(JsonElement of, string name) => of.Maybe(name) is { } n ? Shows.ThreeFigures(n) : "-";
}
