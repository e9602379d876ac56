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
        var sheet = new Sheet(terminal, document.RootElement.Settings());
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
        sheet.Heading(sheet.T("claims"));
        foreach (var claim in root.List("claims"))
        {
            string range = claim.Maybe("mean_n") is null ? sheet.T("claim.merit") : sheet.T("claim.range", Force(claim, "mean_n"), Force(claim, "low_n"), Force(claim, "high_n"));
            sheet.Item($"{Name(claim, "kind")}:", sheet.T("claim", Force(claim, "claimed_n"), Said.Words(range)));
            foreach (var reason in claim.List("reasons")) sheet.Item("-", reason.Why(), 2);
        }
    }

    private void WriteKinds(JsonElement root)
    {
        sheet.Heading(sheet.T("one_more_test"));
        var table = sheet.Table("kind", ">tests", ">middle", ">one_in_twenty");
        foreach (var kind in root.List("kinds")) table.Row(Name(kind, "kind"), kind.Number("n").ToString("0", CultureInfo.InvariantCulture), kind.Force("median_n", Usual), kind.Force("fractile_n", Usual));
        sheet.Write(table);
    }

    private void WritePairs(JsonElement root)
    {
        var pairs = root.List("pairs");
        sheet.Heading(sheet.T("pairs"));
        foreach (var pair in pairs) sheet.Item("-", Pair(pair));
        if (root.Maybe("decided") is { } decided) sheet.Paragraph(sheet.T("pairs.decided", Said.Count((int)decided), Said.Count(pairs.Count)));
    }

    private string Pair(JsonElement pair)
    {
        string chance = pair.Maybe("chance_stronger") is null ? sheet.T("pair.no_chance")
            : sheet.T("pair.stronger", Said.Words(pair.Percent("chance_stronger")), Ratio(pair, "ratio_low"), Ratio(pair, "ratio_high"));
        string decided = pair.TryGetProperty("decided", out var d) ? "; " + sheet.T(d.GetBoolean() ? "decided" : "undecided") : "";
        string more = pair.Maybe("tests_of_each") is { } n ? ", " + sheet.T("pair.more", Said.Words(n.ToString("0", CultureInfo.InvariantCulture))) : "";
        return $"{sheet.T("pair", Said.Words(Name(pair, "kind")), Said.Words(Name(pair, "other")))}: {chance}{decided}{more}. {string.Join(' ', pair.List("reasons").Select(r => r.Why()))}".TrimEnd();
    }

    private static Said Force(JsonElement of, string field) => Said.Words(of.Force(field, Usual));

    private static Said Ratio(JsonElement of, string field) => Said.Words(of.Number(field).ToString("0.00", CultureInfo.InvariantCulture));

    private static string Name(JsonElement of, string field) => Texts.Name(of.Text(field));
}
