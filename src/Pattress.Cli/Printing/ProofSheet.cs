using System.Globalization;
using System.Text.Json;
using Pattress.Jobs;
using Pattress.Jobs.Text;

namespace Pattress.Cli.Printing;

/// <summary>The answer of <c>pattress proof</c> as text: a page to pull by.</summary>
internal sealed class ProofSheet(Sheet sheet, Settings settings)
{
    /// <summary>The text of the document.</summary>
    public static string Text(string json, Terminal terminal)
    {
        using var document = JsonDocument.Parse(json);
        var sheet = new Sheet(terminal, document.RootElement.Settings());
        new ProofSheet(sheet, document.RootElement.Settings()).Write(document.RootElement);
        return sheet.ToString();
    }

    private void Write(JsonElement root)
    {
        sheet.Paragraph(root.Text("title"));
        var reasons = new SharedReasons(root.List("items"));
        foreach (var item in root.List("items")) WriteItem(item, reasons);
        reasons.Write(sheet);
        WriteWays(root);
        ChangedSheet.Write(sheet, root);
        CautionSheet.Write(sheet, root);
    }

    private void WriteItem(JsonElement item, SharedReasons reasons)
    {
        sheet.Heading(sheet.T("item.verdict", Said.Words(item.Text("id")), Said.Words(sheet.Verdict(item.Text("verdict"))), Said.Words(item.Text("name"))));
        WritePulls(item.List("pulls"));
        WriteHangs(item.List("hangs"));
        foreach (var s in item.List("samples"))
            sheet.Paragraph(sheet.T("sample", Said.Count((int)item.Number("count")), Said.Count((int)s.Number("count")), Said.Force(s.Number("load_n"))));
        if (item.Text("scope") != "nothing" || item.GetProperty("recorded").Number("failed") > 0) WriteState(item.GetProperty("recorded"));
        foreach (string reason in reasons.Own(item)) sheet.Item("-", reason);
    }

    private void WritePulls(IReadOnlyList<JsonElement> pulls)
    {
        if (pulls.Count == 0) return;
        var table = sheet.Table("bracket.head", "hole.head", "at_mm", ">pull", ">never_above", "with");
        foreach (var p in pulls)
            table.Row(Nth(p, "bracket"), Nth(p, "hole"), At(p), p.Force("load_n", settings), p.Force("damage_cap_n", settings), With(p));
        sheet.Write(table);
        Hold(sheet.T("pull"), pulls[0]);
    }

    private void WriteHangs(IReadOnlyList<JsonElement> hangs)
    {
        if (hangs.Count == 0) return;
        var table = sheet.Table("bracket.head", ">hang", ">water", ">arm", ">never_above");
        foreach (var h in hangs)
            table.Row(Nth(h, "bracket"), h.Force("weight_n", settings), Litres(h.Number("litres")), Shows.Length(h.Number("arm_mm"), settings), h.Force("damage_cap_n", settings));
        sheet.Write(table);
        Hold(sheet.T("hang"), hangs[0]);
    }

    /// <summary>More than two full buckets are no way to pull at a bracket.</summary>
    private static string Litres(double litres) => litres > MostLitres ? "-" : litres.ToString("0.0", CultureInfo.InvariantCulture);

    /// <summary>Two buckets of ten litres and some more (common practice, no source).</summary>
    private const double MostLitres = 25;

    private void Hold(string what, JsonElement p) => sheet.Item($"{what}:",
        sheet.T("hold", Said.Count((int)p.Number("hold_s")), Said.Words(p.Number("movement_mm").ToString("0.0", CultureInfo.InvariantCulture))));

    private void WriteState(JsonElement state)
    {
        if (state.Number("held") + state.Number("failed") == 0)
        {
            sheet.Item(sheet.T("recorded"), state.Why());
            return;
        }

        string chance = state.Maybe("probability_after") is { } after ? " " + sheet.T("recorded.chance", Said.Words(state.Percent("probability_before")), Said.Percent(after)) : "";
        sheet.Item(sheet.T("recorded"), sheet.T("recorded.says", Said.Count((int)state.Number("held")), Said.Count((int)state.Number("failed"))) + $" {state.Why()}{chance}");
    }

    private void WriteWays(JsonElement root)
    {
        sheet.Heading(sheet.T("ways"));
        foreach (var way in root.List("ways")) sheet.Item("-", $"{way.Why()} {way.Text("cannot")}");
    }

    private static string Nth(JsonElement of, string name) => (of.Number(name) + 1).ToString("0", CultureInfo.InvariantCulture);

    private static string At(JsonElement p) => string.Create(CultureInfo.InvariantCulture, $"{p.GetProperty("at_mm")[0].GetDouble():0}, {p.GetProperty("at_mm")[1].GetDouble():0}");

    private string With(JsonElement p) => p.List("ways").Count == 0 ? sheet.T("tester")
        : p.List("ways").Select(w => w.GetString()!.Replace('_', ' ')).Aggregate((a, b) => sheet.T("either", Said.Words(b), Said.Words(a)));
}
