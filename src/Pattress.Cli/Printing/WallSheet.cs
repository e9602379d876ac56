using System.Globalization;
using System.Text.Json;
using Pattress.Jobs.Text;

namespace Pattress.Cli.Printing;

/// <summary>The answer of <c>pattress wall</c> as text: what each wall is, its supports, what to do next, what each reading changed.</summary>
internal sealed class WallSheet(Sheet sheet)
{
    /// <summary>Build-ups below this stand in the JSON only.</summary>
    private const double Least = 0.01;

    /// <summary>Supports less sure than this stand in the JSON only.</summary>
    private const double LeastSupport = 0.3;

    /// <summary>The text of the document.</summary>
    public static string Text(string json, Terminal terminal)
    {
        using var document = JsonDocument.Parse(json);
        var sheet = new Sheet(terminal, document.RootElement.Settings());
        var root = document.RootElement;
        foreach (var wall in root.TryGetProperty("walls", out var walls) ? walls.EnumerateArray().ToList() : [root]) new WallSheet(sheet).Write(wall);
        if (root.TryGetProperty("holes", out var holes)) new WallSheet(sheet).WriteHoles(holes);
        return sheet.ToString();
    }

    private void Write(JsonElement wall)
    {
        string name = wall.GetProperty("name").GetString()!;
        sheet.Heading(name.Length > 0 ? name : wall.GetProperty("id").GetString()!);
        sheet.Paragraph(Why(wall));
        WriteBuildUps(wall.GetProperty("build_ups"));
        WriteSupports(wall.GetProperty("supports"));
        WriteNext(wall.GetProperty("next"));
        if (wall.TryGetProperty("from_house", out var house)) sheet.Item(sheet.T("house"), Why(house));
        foreach (var c in wall.GetProperty("contradictions").EnumerateArray()) sheet.Item(sheet.T("contradiction"), Why(c));
        if (wall.TryGetProperty("readings", out var readings)) WriteReadings(readings);
        foreach (var note in wall.GetProperty("cautions").EnumerateArray().Concat(wall.GetProperty("assumptions").EnumerateArray())) sheet.Item("-", Why(note));
    }

    private void WriteBuildUps(JsonElement buildUps)
    {
        var table = sheet.Table("build_up", ">likely", ">board_mm", ">void_mm");
        foreach (var b in buildUps.EnumerateArray().Where(b => Number(b, "probability") >= Least))
            table.Row(b.GetProperty("name").GetString()!, Percent(Number(b, "probability")), Spread(b, "board"), Number(b, "void_mm") > 0 ? Spread(b, "void") : "-");
        sheet.Write(table);
    }

    private void WriteSupports(JsonElement supports)
    {
        var shown = supports.EnumerateArray().Where(s => Number(s, "probability") >= LeastSupport).ToList();
        if (shown.Count == 0) return;
        sheet.Item(sheet.T("supports"), string.Join(", ", shown.Select(s =>
            string.Create(CultureInfo.InvariantCulture, $"{Number(s, "centre_mm"):0} ({Percent(Number(s, "probability"))}{(Assumed(s) ? ", " + sheet.T("support_assumed") : "")})"))));
    }

    private static bool Assumed(JsonElement support) => support.GetProperty("basis").GetString() == "assumed";

    private void WriteNext(JsonElement next) => sheet.Item(sheet.T("next"), Why(next));

    private void WriteReadings(JsonElement readings)
    {
        sheet.Heading(sheet.T("readings"));
        foreach (var r in readings.EnumerateArray())
            sheet.Item($"{r.GetProperty("id").GetString()} {LogOdds(r).ToString("+0.0;-0.0;0.0", CultureInfo.InvariantCulture)}",
                string.Join(' ', r.GetProperty("changed").EnumerateArray().Select(Why)));
    }

    private void WriteHoles(JsonElement holes)
    {
        sheet.Heading(sheet.T("holes_met"));
        sheet.Paragraph(Why(holes));
        var log = holes.GetProperty("log").EnumerateArray().ToList();
        if (log.Count == 0) return;
        var table = sheet.Table("hole.head", ">support_chance", "support_met");
        foreach (var h in log) table.Row(h.GetProperty("reading").GetString()!, Percent(Number(h, "predicted")), h.GetProperty("found").GetString()!);
        sheet.Write(table);
        foreach (var r in holes.GetProperty("rates").EnumerateArray()) sheet.Item("-", sheet.T("rate_learned", Said.Words(r.GetProperty("what").GetString()!), Said.Words(Rate(r, "assumed")), Said.Words(Rate(r, "used"))));
    }

    private static string Rate(JsonElement rate, string field) => Number(rate, field).ToString("0.00", CultureInfo.InvariantCulture);

    private static double LogOdds(JsonElement reading) => reading.TryGetProperty("log_odds", out var v) ? v.GetDouble() : 0;

    private static string Why(JsonElement said) => said.GetProperty("why").GetString()!;

    private static double Number(JsonElement of, string name) => of.GetProperty(name).GetDouble();

    private static string Spread(JsonElement b, string what) =>
        string.Create(CultureInfo.InvariantCulture, $"{Number(b, what + "_mm"):0.0} ± {Number(b, what + "_sd_mm"):0.0}");

    private string Percent(double p) => p >= 0.995 ? sheet.T("over", Said.Percent(0.99)) : p < 0.01 ? Shows.Percent(p) : string.Create(CultureInfo.InvariantCulture, $"{100 * p:0} %");
}
