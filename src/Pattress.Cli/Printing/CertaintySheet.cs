using System.Text.Json;
using Pattress.Jobs.Text;

namespace Pattress.Cli.Printing;

/// <summary>The answer of <c>pattress certainty</c> as text.</summary>
internal sealed class CertaintySheet(Sheet sheet)
{
    /// <summary>The text of the document.</summary>
    public static string Text(string json, Terminal terminal)
    {
        using var document = JsonDocument.Parse(json);
        var sheet = new Sheet(terminal.Width, terminal.Colour);
        new CertaintySheet(sheet).Write(document.RootElement);
        return sheet.ToString();
    }

    private void Write(JsonElement root)
    {
        sheet.Paragraph(root.Text("title"));
        foreach (var item in root.List("items")) WriteItem(item);
        ChangedSheet.Write(sheet, root);
        CautionSheet.Write(sheet, root);
    }

    private void WriteItem(JsonElement item)
    {
        sheet.Heading($"{item.Text("name")} ({item.Text("id")}): {Fields.Verdict(item.Text("verdict"))}");
        if (item.GetProperty("planned").GetBoolean()) WriteNumbers(item);
        sheet.Item("Target:", $"at most {item.Percent("target_probability")} (beta {Shows.ThreeFigures(item.Number("target_beta"))}), class {item.Text("class").Replace('_', ' ')}: {item.Text("target_source")}");
        WriteUnknowns(item);
        foreach (var help in item.List("helps")) sheet.Item("Helps:", help.Why());
        foreach (var reason in item.List("reasons")) sheet.Item("-", reason.Why());
    }

    private void WriteNumbers(JsonElement item)
    {
        string beta = item.Maybe("beta") is { } b ? $" (beta {Shows.ThreeFigures(b)})" : "";
        sheet.Item("Chance of failure:", $"{item.Percent("probability_of_failure")}{beta}; without shared causes it would seem {item.Percent("probability_if_independent")}");
        sheet.Item("Design action over resistance:", item.Percent("utilisation"));
        if (item.Maybe("probability_if_proved") is { } proved) sheet.Item("Weakest bracket once proved:", Shows.Percent(proved));
    }

    private void WriteUnknowns(JsonElement item)
    {
        var unknowns = item.List("unknowns");
        if (unknowns.Count == 0) return;
        var table = Columns.Of("What matters, most first", ">Chance if it were known");
        foreach (var unknown in unknowns) table.Row(unknown.Why(), unknown.Percent("probability_if_known"));
        sheet.Write(table);
    }
}

/// <summary>What the user's tests and pulls changed.</summary>
internal static class ChangedSheet
{
    public static void Write(Sheet sheet, JsonElement root)
    {
        var changed = root.List("changed_by_trials");
        if (changed.Count == 0) return;
        sheet.Heading("Changed by your tests and pulls");
        foreach (var c in changed)
            sheet.Item("-", $"{c.Text("id")}: {Fields.Verdict(c.Text("verdict_before"))}, {Fixing(c, "fixing_before")}; now {Fields.Verdict(c.Text("verdict_after"))}, {Fixing(c, "fixing_after")}.");
    }

    private static string Fixing(JsonElement c, string name) => c.TryGetProperty(name, out var fixing) ? Texts.Name(fixing.GetString()!) : "no fixing";
}

/// <summary>The cautions of a document.</summary>
internal static class CautionSheet
{
    public static void Write(Sheet sheet, JsonElement root)
    {
        var cautions = root.List("cautions");
        if (cautions.Count == 0) return;
        sheet.Heading("Mind");
        foreach (var caution in cautions) sheet.Item("-", caution.Why());
    }
}
