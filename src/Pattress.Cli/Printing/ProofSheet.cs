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
        var sheet = new Sheet(terminal.Width, terminal.Colour);
        new ProofSheet(sheet, document.RootElement.Settings()).Write(document.RootElement);
        return sheet.ToString();
    }

    private void Write(JsonElement root)
    {
        sheet.Paragraph(root.Text("title"));
        foreach (var item in root.List("items")) WriteItem(item);
        WriteWays(root);
        ChangedSheet.Write(sheet, root);
        CautionSheet.Write(sheet, root);
    }

    private void WriteItem(JsonElement item)
    {
        sheet.Heading($"{item.Text("name")} ({item.Text("id")}): {Fields.Verdict(item.Text("verdict"))}");
        WritePulls(item.List("pulls"));
        WriteHangs(item.List("hangs"));
        foreach (var s in item.List("samples"))
            sheet.Item("Or a sample:", string.Create(CultureInfo.InvariantCulture, $"{s.Number("count"):0} of them at {s.Force("load_n", settings)}"));
        if (item.Text("scope") != "nothing" || item.GetProperty("recorded").Number("failed") > 0) WriteState(item.GetProperty("recorded"));
        foreach (var reason in item.List("reasons")) sheet.Item("-", reason.Why());
    }

    private void WritePulls(IReadOnlyList<JsonElement> pulls)
    {
        if (pulls.Count == 0) return;
        var table = Columns.Of("Bracket", "Hole", "At, mm", ">Pull", ">Never above", "With");
        foreach (var p in pulls)
            table.Row(Nth(p, "bracket"), Nth(p, "hole"), At(p), p.Force("load_n", settings), p.Force("damage_cap_n", settings), With(p));
        sheet.Write(table);
        Hold("Pull", pulls[0]);
    }

    private void WriteHangs(IReadOnlyList<JsonElement> hangs)
    {
        if (hangs.Count == 0) return;
        var table = Columns.Of("Bracket", ">Hang", ">Water, litres", ">Arm", ">Never above");
        foreach (var h in hangs)
            table.Row(Nth(h, "bracket"), h.Force("weight_n", settings), h.Number("litres").ToString("0.0", CultureInfo.InvariantCulture), Shows.Length(h.Number("arm_mm"), settings), h.Force("damage_cap_n", settings));
        sheet.Write(table);
        Hold("Hang", hangs[0]);
    }

    private void Hold(string what, JsonElement p) => sheet.Item($"{what}:",
        string.Create(CultureInfo.InvariantCulture, $"hold {p.Number("hold_s"):0} s against a pencil mark; more than {p.Number("movement_mm"):0.0} mm of movement is a failure"));

    private void WriteState(JsonElement state)
    {
        string chance = state.Maybe("probability_after") is { } after ? $" Its chance of failure goes from {state.Percent("probability_before")} to {Shows.Percent(after)}." : "";
        sheet.Item("Recorded:", string.Create(CultureInfo.InvariantCulture, $"{state.Number("held"):0} held, {state.Number("failed"):0} failed. {state.Why()}{chance}"));
    }

    private void WriteWays(JsonElement root)
    {
        sheet.Heading("With what a fitter has");
        foreach (var way in root.List("ways")) sheet.Item("-", $"{way.Why()} {way.Text("cannot")}");
    }

    private static string Nth(JsonElement of, string name) => (of.Number(name) + 1).ToString("0", CultureInfo.InvariantCulture);

    private static string At(JsonElement p) => string.Create(CultureInfo.InvariantCulture, $"{p.GetProperty("at_mm")[0].GetDouble():0}, {p.GetProperty("at_mm")[1].GetDouble():0}");

    private static string With(JsonElement p) => p.List("ways").Count == 0 ? "a tester" : string.Join(" or ", p.List("ways").Select(w => w.GetString()!.Replace('_', ' ')));
}
