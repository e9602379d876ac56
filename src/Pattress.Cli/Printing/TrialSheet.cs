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
        var sheet = new Sheet(terminal.Width, terminal.Colour);
        new TrialSheet(sheet).Write(document.RootElement);
        return sheet.ToString();
    }

    private void Write(JsonElement root)
    {
        foreach (var note in root.List("notes")) sheet.Paragraph(note.GetString()!.Replace('_', ' '));
        sheet.Heading("Loads in N");
        WriteKinds(root.List("kinds"));
        sheet.Paragraph($"Characteristic: {root.Percent("fractile")} stay below, {root.Percent("confidence")} confidence, {root.Text("law")}. One more test: middle and {root.Percent("fractile")} fractile, all kinds learning from each other.");
        foreach (var kind in root.List("kinds")) WriteReasons(kind);
        WritePairs(root.List("comparisons"));
        foreach (var e in root.List("effects"))
            sheet.Item("-", string.Create(CultureInfo.InvariantCulture, $"{e.Text("column").Replace('_', ' ')} {e.Text("level").Replace('_', ' ')} against {e.Text("against").Replace('_', ' ')}: {e.Number("ratio"):0.00} times the load, {e.Number("ratio_low"):0.00} to {e.Number("ratio_high"):0.00}; {(e.GetProperty("decided").GetBoolean() ? "decided" : "undecided")}."));
        sheet.Gap();
        foreach (var assumed in root.List("assumptions")) sheet.Item("-", assumed.Why());
    }

    private void WriteKinds(IReadOnlyList<JsonElement> kinds)
    {
        var table = Columns.Of("Kind", ">n", ">Mean", ">s", ">V", ">Characteristic", ">Middle", ">Low");
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
        foreach (var s in kind.List("suspects")) sheet.Item("-", string.Create(CultureInfo.InvariantCulture, $"{Name(kind)}: {N(s, "load_n")} N on line {s.Number("line"):0} stands apart ({s.Text("by")} {s.Number("statistic"):0.000}, critical {s.Number("critical"):0.000}); it was not left out."));
        foreach (var reason in kind.List("reasons")) sheet.Item("-", $"{Name(kind)}: {reason.Why()}");
    }

    private void WritePairs(IReadOnlyList<JsonElement> pairs)
    {
        if (pairs.Count == 0) return;
        sheet.Paragraph(string.Create(CultureInfo.InvariantCulture, $"Of {pairs.Count} pairs of kinds {pairs.Count(p => p.GetProperty("decided").GetBoolean())} are decided{(pairs.Count > MostPairs ? "; pattress compare shows each." : ":")}"));
        if (pairs.Count > MostPairs) return;
        foreach (var p in pairs)
            sheet.Item("-", $"{Texts.Name(p.Text("kind"))} is stronger than {Texts.Name(p.Text("other"))} with {p.Percent("chance_stronger")}: {(p.GetProperty("decided").GetBoolean() ? "decided" : "undecided")}.");
    }

    private static string Name(JsonElement kind) => Texts.Name(kind.Text("kind"));

    private static string N(JsonElement of, string name) => of.Maybe(name) is { } n ? Shows.ThreeFigures(n) : "-";
}
