using System.Globalization;
using System.Text.Json;
using Pattress.Jobs;
using Pattress.Jobs.Text;

namespace Pattress.Cli.Printing;

/// <summary>The answer of <c>pattress compare</c> as text.</summary>
internal sealed class CompareSheet(Sheet sheet)
{
    private static readonly Settings Usual = new();

    /// <summary>The text of the document.</summary>
    public static string Text(string json, Terminal terminal)
    {
        using var document = JsonDocument.Parse(json);
        var sheet = new Sheet(terminal.Width, terminal.Colour);
        new CompareSheet(sheet).Write(document.RootElement);
        return sheet.ToString();
    }

    private void Write(JsonElement root)
    {
        if (root.TryGetProperty("claims", out _)) WriteClaims(root);
        else WriteKinds(root);
        WritePairs(root);
        sheet.Gap();
        foreach (var assumed in root.List("assumptions")) sheet.Item("-", assumed.Why());
    }

    private void WriteClaims(JsonElement root)
    {
        sheet.Heading("Claims on one basis: the mean strength of one fixing");
        foreach (var claim in root.List("claims"))
        {
            string range = claim.Maybe("mean_n") is null ? "an order of merit" : $"about {claim.Force("mean_n", Usual)}, nine times in ten between {claim.Force("low_n", Usual)} and {claim.Force("high_n", Usual)}";
            sheet.Item($"{Name(claim, "kind")}:", $"claimed {claim.Force("claimed_n", Usual)}; {range}.");
            foreach (var reason in claim.List("reasons")) sheet.Item("-", reason.Why(), 2);
        }
    }

    private void WriteKinds(JsonElement root)
    {
        sheet.Heading("One more test, all kinds learning from each other");
        var table = Columns.Of("Kind", ">Tests", ">Middle", ">One in twenty below");
        foreach (var kind in root.List("kinds")) table.Row(Name(kind, "kind"), kind.Number("n").ToString("0", CultureInfo.InvariantCulture), kind.Force("median_n", Usual), kind.Force("fractile_n", Usual));
        sheet.Write(table);
    }

    private void WritePairs(JsonElement root)
    {
        var pairs = root.List("pairs");
        sheet.Heading("Pairs");
        foreach (var pair in pairs) sheet.Item("-", Pair(pair));
        if (root.Maybe("decided") is { } decided) sheet.Paragraph(string.Create(CultureInfo.InvariantCulture, $"Decided: {decided:0} of {pairs.Count}."));
    }

    private static string Pair(JsonElement pair)
    {
        string chance = pair.Maybe("chance_stronger") is null ? "no chance can be given"
            : string.Create(CultureInfo.InvariantCulture, $"the first is stronger with {pair.Percent("chance_stronger")}, {pair.Number("ratio_low"):0.00} to {pair.Number("ratio_high"):0.00} times as strong");
        string decided = pair.TryGetProperty("decided", out var d) ? d.GetBoolean() ? "; decided" : "; undecided" : "";
        string more = pair.Maybe("tests_of_each") is { } n ? string.Create(CultureInfo.InvariantCulture, $", about {n:0} tests of each would settle it") : "";
        return $"{Name(pair, "kind")} against {Name(pair, "other")}: {chance}{decided}{more}. {string.Join(' ', pair.List("reasons").Select(r => r.Why()))}".TrimEnd();
    }

    private static string Name(JsonElement of, string field) => Texts.Name(of.Text(field));
}
