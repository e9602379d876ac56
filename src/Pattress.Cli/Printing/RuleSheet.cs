using System.Globalization;
using System.Text.Json;
using Pattress.Jobs.Text;
using Spectre.Console;

namespace Pattress.Cli.Printing;

/// <summary>Published rules as text.</summary>
internal static class RuleSheet
{
    /// <summary>One line a rule, its title and clause below.</summary>
    public static string List(string json, Terminal terminal)
    {
        using var document = JsonDocument.Parse(json);
        var sheet = new Sheet(terminal, document.RootElement.Settings());
        var rules = document.RootElement.GetProperty("rules");
        foreach (var rule in rules.EnumerateArray()) Write(sheet, rule);
        sheet.Paragraph(sheet.Count("rules", rules.GetArrayLength()));
        return sheet.ToString();
    }

    /// <summary>One rule's value with each step, or why it does not cover the case.</summary>
    public static string One(string json, Terminal terminal)
    {
        using var document = JsonDocument.Parse(json);
        var sheet = new Sheet(terminal, document.RootElement.Settings());
        var root = document.RootElement;
        sheet.Paragraph(Word(root, "id"), style: new Style(decoration: Decoration.Bold));
        if (root.TryGetProperty("not_covered", out var why)) sheet.Paragraph(sheet.T("not_covered", Said.Words(why.GetString()!)));
        else Write(sheet, root, root.GetProperty("working"));
        return sheet.ToString();
    }

    private static void Write(Sheet sheet, JsonElement root, JsonElement working)
    {
        sheet.Paragraph($"{Shows.ThreeFigures(root.GetProperty("value").GetDouble())} {Word(root, "unit")}  [{Word(root, "clause")}]");
        int number = 0;
        foreach (var step in working.EnumerateArray())
            sheet.Item($"{++number}.", StepLine.Of(sheet, Word(step, "symbol"), Word(step, "formula"), Word(step, "numbers"), step.GetProperty("value").GetDouble(), Word(step, "unit"), Word(step, "clause")));
    }

    private static void Write(Sheet sheet, JsonElement rule)
    {
        sheet.Paragraph(Word(rule, "id"), style: new Style(decoration: Decoration.Bold));
        sheet.Paragraph($"{Word(rule, "title")}  [{Word(rule, "clause")}]", 2);
        sheet.Paragraph(string.Join("; ", rule.GetProperty("inputs").EnumerateArray().Select(i => Input(sheet, i))), 2);
    }

    private static string Input(Sheet sheet, JsonElement input) => input.TryGetProperty("words", out var words)
        ? $"{Word(input, "symbol")} {string.Join("|", words.EnumerateArray())}"
        : sheet.T("range", Said.Words(Bound(input, "from")), Said.Words(Bound(input, "to")), Said.Words(Word(input, "unit")), Said.Words(Word(input, "symbol"))).TrimEnd();

    private static string Bound(JsonElement input, string field) => input.GetProperty(field).GetDouble().ToString("G6", CultureInfo.InvariantCulture);

    private static string Word(JsonElement of, string field) => of.GetProperty(field).GetString()!;
}
