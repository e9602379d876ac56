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
        var sheet = new Sheet(terminal, document.RootElement.Settings());
        new CertaintySheet(sheet).Write(document.RootElement);
        return sheet.ToString();
    }

    private void Write(JsonElement root)
    {
        sheet.Paragraph(root.Text("title"));
        var reasons = new SharedReasons(root.List("items"));
        foreach (var item in root.List("items")) WriteItem(item, reasons);
        reasons.Write(sheet);
        ChangedSheet.Write(sheet, root);
        CautionSheet.Write(sheet, root);
    }

    private void WriteItem(JsonElement item, SharedReasons reasons)
    {
        sheet.Heading(sheet.T("item.verdict", Said.Words(item.Text("id")), Said.Words(sheet.Verdict(item.Text("verdict"))), Said.Words(item.Text("name"))));
        if (item.GetProperty("planned").GetBoolean()) WriteNumbers(item);
        sheet.Item(sheet.T("target"), sheet.T("target.says", Said.Words(item.Percent("target_probability")), Said.Plain(item.Number("target_beta")), Said.Name("class." + item.Text("class")), Said.Words(item.Text("target_source"))));
        WriteUnknowns(item);
        foreach (var help in item.List("helps")) sheet.Item(help.Text("code") == "help_ample" ? "-" : sheet.T("helps"), help.Why());
        foreach (string reason in reasons.Own(item)) sheet.Item("-", reason);
    }

    private void WriteNumbers(JsonElement item)
    {
        string chance = item.Percent("probability_of_failure");
        if (item.Maybe("beta") is { } beta) chance = sheet.T("with_beta", Said.Words(chance), Said.Plain(beta));
        sheet.Item(sheet.T("failure"), sheet.T("failure.says", Said.Words(chance), Said.Words(item.Percent("probability_if_independent"))));
        sheet.Item(sheet.T("action_over_resistance"), item.Percent("utilisation"));
        if (item.Maybe("probability_if_proved") is { } proved) sheet.Item(sheet.T("once_proved"), Shows.Percent(proved));
    }

    private void WriteUnknowns(JsonElement item)
    {
        var unknowns = item.List("unknowns");
        if (unknowns.Count == 0) return;
        var table = sheet.Table("what_matters", ">if_known");
        foreach (var unknown in unknowns) table.Row(unknown.Why(), Shows.Chance(unknown.Number("probability_if_known")));
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
        sheet.Heading(sheet.T("changed"));
        foreach (var c in changed)
            sheet.Item("-", sheet.T("changed.says", Word(sheet, c, "before"), Fixing(sheet, c, "before"), Word(sheet, c, "after"), Fixing(sheet, c, "after"), Said.Words(c.Text("id"))));
    }

    private static Said Word(Sheet sheet, JsonElement c, string when) => Said.Words(sheet.Verdict(c.Text("verdict_" + when)));

    private static Said Fixing(Sheet sheet, JsonElement c, string when) => c.TryGetProperty("fixing_" + when, out var fixing) ? Said.Name(fixing.GetString()!) : Said.Words(sheet.T("no_fixing"));
}

/// <summary>The cautions of a document.</summary>
internal static class CautionSheet
{
    public static void Write(Sheet sheet, JsonElement root)
    {
        var cautions = root.List("cautions");
        if (cautions.Count == 0) return;
        sheet.Heading(sheet.T("mind"));
        foreach (var caution in cautions) sheet.Item("-", caution.Why());
    }
}
